package trammel.brackets.mount;

import java.util.List;
import trammel.assembly.FlatPath;
import trammel.assembly.Place;
import trammel.assembly.SeamRun;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Vector3;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.Loop;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Plate;

/**
 * Plates flat on the rails' inner faces, to which the ends of the crossmember's tube are welded.
 */
final class PlateLegs extends CrossmemberLegs {
  /** Higher than the tube's end by 3/8 in, for the weld: common practice, no source. */
  private static final double ROUND_TUBE_MM = 0.375 * 25.4;

  /** And wider than it by 1 in on each side, for they bend flatwise: common practice, no source. */
  private static final double BESIDE_TUBE_MM = 25.4;

  PlateLegs(Crossmember member) {
    super(member);
  }

  @Override
  double besideTubeMm() {
    return member.stock().plateMm();
  }

  @Override
  double inwardMm() {
    return member.stock().plateMm();
  }

  @Override
  double widthMm() {
    return member.widthMm() + 2 * BESIDE_TUBE_MM;
  }

  @Override
  double lengthMm() {
    return member.lapMm() + member.beyondMm() + member.heightMm() + ROUND_TUBE_MM;
  }

  @Override
  int pieces() {
    return 0;
  }

  @Override
  void addTo(WorkPlan.Builder plan, Phrase why) {
    MountStock stock = member.stock();
    plan.add(
        new PlateNeed(
            new Plate(name(), outline(), stock.plateMm(), stock.bracket().title()),
            stock.bracket().key(),
            places(),
            Phrase.of("{}, so flat that the bars beside it pass", why)));
    plan.add(
        new OperationNeed(
            "dress-plate", 2, "2 plates", Phrase.of("legs of the {}", member.name())));
  }

  /** From the middle of the tube's end, past it all round. */
  private Outline outline() {
    double halfMm = widthMm() / 2;
    double beyondMm = member.heightMm() / 2 + ROUND_TUBE_MM;
    double footMm = member.footMm() - member.upMm();
    double lowMm = member.above() ? footMm : -beyondMm;
    double highMm = member.above() ? beyondMm : footMm;
    return Outline.solid(
        new Loop(
            List.of(
                Crossmember.edge(-halfMm, lowMm, halfMm, lowMm),
                Crossmember.edge(halfMm, lowMm, halfMm, highMm),
                Crossmember.edge(halfMm, highMm, -halfMm, highMm),
                Crossmember.edge(-halfMm, highMm, -halfMm, lowMm))));
  }

  /** Bent along the rail by what turns the tube, and by its own half thickness. */
  @Override
  double bent(double share, double offMm) {
    double plateMm = member.stock().plateMm();
    return MemberStress.plate(share * offMm, plateMm, widthMm())
        + MemberStress.plate(share * plateMm / 2, widthMm(), plateMm)
        + share / (plateMm * widthMm());
  }

  /**
   * What pushes the tube across bends both plates flatwise: they share it, held at the rail and at
   * the tube, so that each has a quarter of the push times its free height at its ends.
   */
  @Override
  double flatwise(double acrossShare) {
    return MemberStress.plate(leant(acrossShare), widthMm(), member.stock().plateMm());
  }

  @Override
  double freeMm() {
    return lengthMm() - member.lapMm() - member.heightMm() / 2 - ROUND_TUBE_MM;
  }

  @Override
  double secondMomentMm4() {
    return widthMm() * Math.pow(member.stock().plateMm(), 3) / 12;
  }

  @Override
  double modulusMm3() {
    return widthMm() * Math.pow(member.stock().plateMm(), 2) / 6;
  }

  @Override
  Place place(boolean left) {
    Place face = member.face(left);
    Vector3 inward = face.z().scaled(left ? 1 : -1);
    return Place.lying(face.origin(), face.x(), face.y(), inward, member.stock().plateMm());
  }

  @Override
  SeamRun onTube(boolean left) {
    double plateMm = member.stock().plateMm();
    Place end = member.face(left).shifted(0, 0, left ? plateMm : -plateMm);
    return new SeamRun(member.name(), id(left), FlatPath.round(end, member.section().outer()));
  }

  @Override
  String roundText() {
    return "round each end of the tube";
  }
}

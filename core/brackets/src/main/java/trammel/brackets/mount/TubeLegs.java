package trammel.brackets.mount;

import trammel.assembly.FlatPath;
import trammel.assembly.Place;
import trammel.assembly.Prism;
import trammel.assembly.SeamRun;
import trammel.brackets.work.TubeNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.quantity.Phrase;

/** Pieces of the crossmember's own tube, under its ends or over them. */
final class TubeLegs extends CrossmemberLegs {
  TubeLegs(Crossmember member) {
    super(member);
  }

  @Override
  double besideTubeMm() {
    return 0;
  }

  @Override
  double inwardMm() {
    return member.heightMm();
  }

  @Override
  double widthMm() {
    return member.widthMm();
  }

  @Override
  double lengthMm() {
    return member.lapMm() + member.beyondMm();
  }

  @Override
  int pieces() {
    return 2;
  }

  @Override
  void addTo(WorkPlan.Builder plan, Phrase why) {
    plan.add(
        new TubeNeed(
            name(),
            member.stock().tube().key(),
            lengthMm(),
            Prism.plate(member.section(), lengthMm()),
            places(),
            Phrase.of("both ends square"),
            why));
  }

  @Override
  double bent(double share, double offMm) {
    return MemberStress.tube(
        member.stock().section(), share * member.heightMm() / 2, share * offMm, 0, share);
  }

  @Override
  double freeMm() {
    return member.beyondMm() + member.heightMm() / 2;
  }

  @Override
  double secondMomentMm4() {
    return member.design().secondMomentXMm4();
  }

  @Override
  double modulusMm3() {
    return member.design().modulusTopMm3();
  }

  /** Nothing by itself: the tube's bending covers it. */
  @Override
  double flatwise(double acrossShare) {
    return 0;
  }

  @Override
  Place place(boolean left) {
    double sideMm = member.rails().innerFaceMm(member.forwardMm()) - member.heightMm() / 2;
    return Place.of(
        new Point3(member.forwardMm(), left ? sideMm : -sideMm, member.footMm()),
        new Vector3(1, 0, 0),
        new Vector3(0, member.above() ? 1 : -1, 0));
  }

  @Override
  SeamRun onTube(boolean left) {
    Place end = place(left).shifted(0, 0, lengthMm());
    return new SeamRun(member.name(), id(left), FlatPath.round(end, member.section().outer()));
  }

  @Override
  String roundText() {
    return "round the top of each leg";
  }
}

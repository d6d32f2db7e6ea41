package trammel.brackets.barend;

import static trammel.engine.quantity.Amount.length;

import trammel.brackets.bar.HoleRow;
import trammel.brackets.bar.JointSeat;
import trammel.brackets.bar.RailFace;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Rails;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.RailBracket;

/**
 * Where the bracket of a bar's frame end takes hold of the rail. It hangs from the rail where the
 * joint lies low enough, and stands on it otherwise. The base is the line on the rail's flat face
 * at which the bracket plates begin to narrow towards the joint.
 *
 * @param bar name of the bar
 * @param joint centre of the joint (mm)
 * @param seat joint and bracket plates
 * @param hangs true when the joint lies below the base
 * @param baseUpMm height of the base above ground (mm)
 * @param faceMm flat rail face from the base away from the joint (mm)
 * @param baseLengthMm length of the base along the rail (mm)
 */
public record RailSeat(
    String bar,
    Point3 joint,
    JointSeat seat,
    boolean hangs,
    double baseUpMm,
    double faceMm,
    double baseLengthMm) {
  public static RailSeat of(Bar bar, JointSeat seat, Rails rails) {
    Point3 joint = bar.frame();
    RailFace face = RailFace.of(bar.name(), joint, seat, rails);
    double dropMm = Math.abs(joint.zMm() - face.baseUpMm());
    double lengthMm = RailBracket.baseByRuleMm(dropMm + seat.row().farMm(), seat.noseMm());
    return new RailSeat(
        bar.name(), joint, seat, face.hangs(), face.baseUpMm(), face.flatMm(), lengthMm);
  }

  /** From the base to the joint's centre, upright (mm). */
  public double dropMm() {
    return Math.abs(joint.zMm() - baseUpMm);
  }

  /** From the base to the hole farthest from it, upright (mm). */
  public double farDropMm() {
    return dropMm() + seat.row().farMm();
  }

  /** The middle of the base, over the joint (mm). */
  public Point3 base() {
    return new Point3(joint.xMm(), joint.yMm(), baseUpMm);
  }

  /** From the joint to the base, up or down. */
  public Vector3 towardsRail() {
    return new Vector3(0, 0, hangs ? 1 : -1);
  }

  /** From the rail's inner face to its outer face. */
  public Vector3 outward() {
    return new Vector3(0, left() ? 1 : -1, 0);
  }

  public boolean left() {
    return joint.yMm() > 0;
  }

  public String side() {
    return left() ? "left" : "right";
  }

  /** The shortest base that still holds the joint's nose (mm). */
  public double leastBaseMm() {
    return 2 * (seat.noseMm() + seat.plateMm());
  }

  public RailSeat withBase(double lengthMm) {
    return new RailSeat(bar, joint, seat, hangs, baseUpMm, faceMm, lengthMm);
  }

  /** How the base's length comes about, for reasons. */
  public Phrase baseReason() {
    double byRuleMm = RailBracket.baseByRuleMm(farDropMm(), seat.noseMm());
    Phrase base = Phrase.of("base {}", length(baseLengthMm));
    return baseLengthMm < byRuleMm - 1e-6
        ? Phrase.of(
            "{}, shortened from {} to keep off the next bracket on the rail",
            base,
            length(byRuleMm))
        : Phrase.of("{} from a load spread of 30 deg to either side of the joint", base);
  }

  private Phrase holes() {
    HoleRow row = seat.row();
    return row.holes() == 1
        ? Phrase.NONE
        : Phrase.of(
            "; hole {} of {} counted from the rail is the layout's, {} from hole to"
                + " hole; another hole is another layout, so move the pick-up point in the"
                + " job file and check that first",
            row.layoutHole(),
            row.holes(),
            length(row.pitchMm()));
  }

  /** How the joint lies to the rail, for reasons. */
  public Phrase place() {
    return Phrase.of(
        "frame joint of {} {} ahead of the axle, {}{} the bracket's base on the rail{}",
        bar,
        length(joint.xMm()),
        length(dropMm()),
        hangs ? " below" : " above",
        holes());
  }
}

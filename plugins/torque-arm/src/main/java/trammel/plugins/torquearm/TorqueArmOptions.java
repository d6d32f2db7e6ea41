package trammel.plugins.torquearm;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.brackets.bar.BarMakeUp;
import trammel.brackets.bar.HoleRow;
import trammel.brackets.bar.Mounting;
import trammel.brackets.material.PlateMaterial;
import trammel.brackets.mount.MountStock;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Rails;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.Site;
import trammel.planning.options.BarOptions;
import trammel.planning.options.MountOptions;
import trammel.reading.fields.Field;
import trammel.trade.steel.RectangularTube;

/** The options of a torque arm with its bars, as a job sets them. */
final class TorqueArmOptions {
  /** A shorter link swings too far out of upright as the axle rises, 6 in: common practice. */
  private static final double LEAST_LINK_MM = 6 * 25.4;

  /** Kept between the crossmember and the rail's rounded corner, 1/4 in: common practice. */
  private static final double CORNER_MM = 25.4 / 4;

  static final Field<Double> LOWER_LENGTH =
      BarOptions.inches(
          "lower_length", "lower bars, joint centre to joint centre at ride", 10, 60, 24);
  static final Field<Double> LOWER_ANGLE =
      BarOptions.levelAngle("lower_angle", "rise of the lower bars to the front at ride", 1);
  static final Field<Double> ARM_LENGTH =
      BarOptions.inches(
          "arm_length", "front eye of the arm ahead of the axle's centre", 20, 66, 36);
  static final Field<Double> ARM_RISE =
      BarOptions.inches("arm_rise", "front eye above the axle's centre at ride", -6, 6, 0);
  static final Field<String> ARM_SIDE =
      Field.choice("arm_side", "side of the driveshaft on which the arm runs", sides())
          .calling(
              Map.of(
                  "left",
                  "torque arm to the left of the driveshaft",
                  "right",
                  "torque arm to the right of the driveshaft"))
          .withDefault("left");
  static final Field<Double> LINK_LENGTH =
      Field.lengthMm(
              "link_length",
              "drop link, from the arm's eye up to its joint on the frame; left out, as long as"
                  + " brings the crossmember under the rails' top, 6 in at least",
              LEAST_LINK_MM,
              3 * LEAST_LINK_MM)
          .optional();
  static final Field<Double> RAIL_GAP = BarOptions.railGap();
  static final Field<String> LATERAL_SIDE =
      Field.choice("lateral_side", "rail from which the lateral bar's frame end hangs", sides())
          .calling(
              Map.of(
                  "left",
                  "lateral bar hung from the left rail",
                  "right",
                  "lateral bar hung from the right rail"))
          .withDefault("left");
  static final Field<Double> LATERAL_RISE =
      BarOptions.inches("lateral_rise", "lateral bar above the axle's centre", -6, 12, 2);

  private final Site site;

  TorqueArmOptions(Site site) {
    this.site = site;
  }

  private static List<String> sides() {
    return List.of("left", "right");
  }

  static List<Field<?>> fields(Catalog catalog) {
    return List.of(
        BarOptions.mounting("lower bars"),
        LOWER_LENGTH,
        LOWER_ANGLE,
        BarOptions.LOWER_DROP,
        ARM_LENGTH,
        ARM_RISE,
        ARM_SIDE,
        LINK_LENGTH,
        RAIL_GAP,
        LATERAL_SIDE,
        BarOptions.LATERAL_BEHIND,
        LATERAL_RISE,
        barTube(catalog),
        lateralTube(catalog),
        linkTube(catalog),
        BarOptions.frameEnd(catalog),
        BarOptions.FRAME_HOLES,
        BarOptions.HOLE_PITCH,
        BarOptions.axleEnd(catalog),
        BarOptions.bracketPlate(catalog),
        BarOptions.LIGHTENING,
        MountOptions.crossmember(catalog),
        BarOptions.boxingPlate(catalog));
  }

  private static Field<String> barTube(Catalog catalog) {
    return BarOptions.tube("bar_tube", "tube of the lower bars", catalog);
  }

  private static Field<String> lateralTube(Catalog catalog) {
    return BarOptions.tube("lateral_tube", "tube of the lateral bar", catalog);
  }

  private static Field<String> linkTube(Catalog catalog) {
    return BarOptions.tube("link_tube", "tube of the drop link", catalog);
  }

  <T> T get(Field<T> field) {
    return site.options().get(field);
  }

  /** An option that the vehicle decides where the job does not. */
  Optional<Double> find(Field<Double> field) {
    return site.options().find(field);
  }

  Mounting mounting() {
    return Mounting.ofWord(get(BarOptions.mounting("lower bars")));
  }

  /** Length of the drop link over an eye (mm). */
  double linkLengthMm(Point3 eye) {
    Optional<Double> asked = site.options().find(LINK_LENGTH);
    RectangularTube section = mountStock().section();
    // A rail that slopes is lower at one side of the crossmember.
    double frontMm = eye.xMm() + link().frameSeat().reachMm() + section.widthMm();
    Rails rails = site.chassis().rails();
    double topMm =
        Math.min(rails.topMm(eye.xMm()), rails.topMm(frontMm)) - CORNER_MM - section.heightMm() / 2;
    return asked.orElse(Math.max(LEAST_LINK_MM, Math.min(3 * LEAST_LINK_MM, topMm - eye.zMm())));
  }

  /** +1 when the arm runs on the left of the shaft, -1 on the right. */
  int armSide() {
    return get(ARM_SIDE).equals("left") ? 1 : -1;
  }

  /** +1 when the lateral bar's frame end is on the left, -1 on the right. */
  int lateralSide() {
    return get(LATERAL_SIDE).equals("left") ? 1 : -1;
  }

  BarMakeUp bars() {
    return BarOptions.makeUp(site, barTube(site.catalog()));
  }

  BarMakeUp lateral() {
    return BarOptions.makeUp(site, lateralTube(site.catalog())).withFrameHoles(HoleRow.SINGLE);
  }

  /** Barrels at both ends: a link this short leaves no room for a threaded end. */
  BarMakeUp link() {
    BarMakeUp made = BarOptions.makeUp(site, linkTube(site.catalog()));
    return new BarMakeUp(
        made.tube(),
        made.axleEnd(),
        made.axleEnd(),
        made.bracket(),
        HoleRow.SINGLE,
        made.lightened());
  }

  PlateMaterial boxing() {
    return site.catalog().plate(get(BarOptions.boxingPlate(site.catalog())));
  }

  /** What the crossmember and its tabs are made of. */
  MountStock mountStock() {
    Catalog catalog = site.catalog();
    return new MountStock(
        catalog.plate(get(BarOptions.bracketPlate(catalog))),
        catalog.bar(get(MountOptions.crossmember(catalog))),
        boxing(),
        catalog.boltSizes());
  }
}

package trammel.plugins.wattslinkage;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.brackets.bar.BarMakeUp;
import trammel.brackets.bar.HoleRow;
import trammel.brackets.bar.Mounting;
import trammel.brackets.material.BarMaterial;
import trammel.brackets.material.PlateMaterial;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.Site;
import trammel.planning.options.BarOptions;
import trammel.reading.fields.Field;

/** The options of four links and a Watt's linkage, as a job sets them. */
final class WattsOptions {
  private static final double INCH_MM = 25.4;

  private static final Field<Double> LOWER_LENGTH =
      BarOptions.inches(
          "lower_length", "lower bars, joint centre to joint centre at ride", 10, 60, 24);
  private static final Field<Double> UPPER_LENGTH =
      BarOptions.inches(
          "upper_length", "upper bars, joint centre to joint centre at ride", 8, 60, 18);
  private static final Field<Double> LOWER_ANGLE =
      BarOptions.levelAngle("lower_angle", "rise of the lower bars to the front at ride", 1);
  private static final Field<Double> UPPER_ANGLE =
      BarOptions.levelAngle("upper_angle", "fall of the upper bars to the front at ride", 1.5);
  private static final Field<Double> RAIL_GAP = BarOptions.railGapFromVehicle();
  private static final Field<Double> ROCKER_ARM =
      BarOptions.inches(
          "rocker_arm", "rocker's arms, from its pivot to the joint of each link", 2, 6, 3);
  private static final Field<Double> ROCKER_BEHIND =
      Field.lengthMm(
              "rocker_behind",
              "rocker behind the axle's centre; left out, as near as the centre housing lets it,"
                  + " which is taken as 6 in in radius where it is not measured",
              4 * INCH_MM,
              24 * INCH_MM)
          .optional();
  private static final Field<Double> ROCKER_RISE =
      Field.lengthMm(
              "rocker_rise",
              "rocker's pivot above the axle's centre, negative below; left out, at the axle's"
                  + " centre, or so far below it that the upper link's frame end clears the rail",
              -8 * INCH_MM,
              8 * INCH_MM)
          .optional();
  private static final Field<String> UPPER_LINK_SIDE =
      Field.choice(
              "upper_link_side",
              "rail to which the link from the rocker's upper end runs; the lower one runs to the"
                  + " other",
              List.of("left", "right"))
          .calling(
              Map.of(
                  "left",
                  "rocker's upper link run to the left rail",
                  "right",
                  "rocker's upper link run to the right rail"))
          .withDefault("left");

  private final Site site;

  WattsOptions(Site site) {
    this.site = site;
  }

  static List<Field<?>> fields(Catalog catalog) {
    return List.of(
        BarOptions.mounting("bars"),
        LOWER_LENGTH,
        UPPER_LENGTH,
        LOWER_ANGLE,
        UPPER_ANGLE,
        BarOptions.LOWER_DROP,
        BarOptions.UPPER_RISE,
        RAIL_GAP,
        ROCKER_ARM,
        ROCKER_BEHIND,
        ROCKER_RISE,
        UPPER_LINK_SIDE,
        barTube(catalog),
        linkTube(catalog),
        carrierTube(catalog),
        BarOptions.frameEnd(catalog),
        BarOptions.FRAME_HOLES,
        BarOptions.HOLE_PITCH,
        BarOptions.axleEnd(catalog),
        BarOptions.bracketPlate(catalog),
        BarOptions.LIGHTENING,
        BarOptions.boxingPlate(catalog));
  }

  private static Field<String> barTube(Catalog catalog) {
    return BarOptions.tube("bar_tube", "tube of the lower and upper bars", catalog);
  }

  private static Field<String> linkTube(Catalog catalog) {
    return BarOptions.tube("link_tube", "tube of the two links of the rocker", catalog);
  }

  private static Field<String> carrierTube(Catalog catalog) {
    return BarOptions.tube(
        "carrier_tube", "tube of the arms and spacers that carry the rocker's pivot", catalog);
  }

  Mounting mounting() {
    return Mounting.ofWord(site.options().get(BarOptions.mounting("bars")));
  }

  double lowerLengthMm() {
    return site.options().get(LOWER_LENGTH);
  }

  double upperLengthMm() {
    return site.options().get(UPPER_LENGTH);
  }

  double lowerAngleRad() {
    return site.options().get(LOWER_ANGLE);
  }

  double upperAngleRad() {
    return site.options().get(UPPER_ANGLE);
  }

  /** Empty where the vehicle is to say. */
  Optional<Double> lowerDropMm() {
    return site.options().find(BarOptions.LOWER_DROP);
  }

  /** Empty where the vehicle is to say. */
  Optional<Double> upperRiseMm() {
    return site.options().find(BarOptions.UPPER_RISE);
  }

  /** Empty where the vehicle is to say. */
  Optional<Double> railGapMm() {
    return site.options().find(RAIL_GAP);
  }

  double rockerArmMm() {
    return site.options().get(ROCKER_ARM);
  }

  Optional<Double> rockerBehindMm() {
    return site.options().find(ROCKER_BEHIND);
  }

  Optional<Double> rockerRiseMm() {
    return site.options().find(ROCKER_RISE);
  }

  /** +1 when the upper link runs to the left rail, -1 to the right. */
  int upperLinkSide() {
    return "left".equals(site.options().get(UPPER_LINK_SIDE)) ? 1 : -1;
  }

  BarMakeUp bars() {
    return BarOptions.makeUp(site, barTube(site.catalog()));
  }

  BarMakeUp links() {
    return BarOptions.makeUp(site, linkTube(site.catalog())).withFrameHoles(HoleRow.SINGLE);
  }

  BarMaterial carrierTube() {
    return site.catalog().bar(site.options().get(carrierTube(site.catalog())));
  }

  PlateMaterial boxing() {
    return site.catalog().plate(site.options().get(BarOptions.boxingPlate(site.catalog())));
  }
}

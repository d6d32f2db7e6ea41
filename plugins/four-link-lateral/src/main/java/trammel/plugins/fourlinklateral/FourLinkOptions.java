package trammel.plugins.fourlinklateral;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.brackets.bar.BarMakeUp;
import trammel.brackets.bar.HoleRow;
import trammel.brackets.bar.Mounting;
import trammel.brackets.material.PlateMaterial;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.Site;
import trammel.planning.options.BarOptions;
import trammel.reading.fields.Field;

/** The options of four links and a lateral bar, as a job sets them. */
final class FourLinkOptions {
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
  private static final Field<String> LATERAL_SIDE =
      Field.choice(
              "lateral_side",
              "rail from which the lateral bar's frame end hangs",
              List.of("left", "right"))
          .calling(
              Map.of(
                  "left",
                  "lateral bar hung from the left rail",
                  "right",
                  "lateral bar hung from the right rail"))
          .withDefault("left");
  private static final Field<Double> LATERAL_RISE =
      BarOptions.inches("lateral_rise", "lateral bar above the axle's centre", -6, 12, 2);

  private final Site site;

  FourLinkOptions(Site site) {
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
        LATERAL_SIDE,
        BarOptions.LATERAL_BEHIND,
        LATERAL_RISE,
        barTube(catalog),
        lateralTube(catalog),
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

  private static Field<String> lateralTube(Catalog catalog) {
    return BarOptions.tube("lateral_tube", "tube of the lateral bar", catalog);
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

  /** +1 when the lateral bar's frame end is on the left, -1 on the right. */
  int lateralSide() {
    return "left".equals(site.options().get(LATERAL_SIDE)) ? 1 : -1;
  }

  /** Empty where the vehicle is to say. */
  Optional<Double> lateralBehindMm() {
    return site.options().find(BarOptions.LATERAL_BEHIND);
  }

  double lateralRiseMm() {
    return site.options().get(LATERAL_RISE);
  }

  BarMakeUp bars() {
    return BarOptions.makeUp(site, barTube(site.catalog()));
  }

  BarMakeUp lateral() {
    return BarOptions.makeUp(site, lateralTube(site.catalog())).withFrameHoles(HoleRow.SINGLE);
  }

  PlateMaterial boxing() {
    return site.catalog().plate(site.options().get(BarOptions.boxingPlate(site.catalog())));
  }
}

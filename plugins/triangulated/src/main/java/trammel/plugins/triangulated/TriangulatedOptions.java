package trammel.plugins.triangulated;

import java.util.List;
import java.util.Optional;
import trammel.brackets.bar.BarMakeUp;
import trammel.brackets.bar.Mounting;
import trammel.brackets.material.PlateMaterial;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.Site;
import trammel.planning.options.BarOptions;
import trammel.reading.fields.Field;

/** The options of a triangulated four-link, as a job sets them. */
final class TriangulatedOptions {
  private static final Field<Double> LOWER_LENGTH =
      BarOptions.inches(
          "lower_length", "lower bars, joint centre to joint centre at ride", 10, 60, 24);
  private static final Field<Double> UPPER_LENGTH =
      BarOptions.inches(
          "upper_length", "upper bars, joint centre to joint centre at ride", 10, 60, 18);
  private static final Field<Double> LOWER_ANGLE =
      BarOptions.levelAngle("lower_angle", "rise of the lower bars to the front at ride", 1);
  private static final Field<Double> UPPER_ANGLE =
      BarOptions.levelAngle(
          "upper_angle", "fall of the upper bars to the front at ride, seen from the side", 1.5);
  private static final Field<Double> UPPER_RISE =
      Field.lengthMm(
              "upper_rise",
              "upper joints over the housing, above the axle's centre; left out, the least height"
                  + " that clears the housing and finds a flat on the rail",
              4 * 25.4,
              16 * 25.4)
          .optional();
  private static final Field<Double> UPPER_SPREAD =
      BarOptions.inches(
          "upper_spread", "upper joints on the axle, centre to centre across", 2, 24, 6);
  private static final Field<Double> HOUSING_HEIGHT =
      Field.lengthMm(
              "housing_height",
              "top of the centre housing above the axle's centre, which the bridge must clear; left"
                  + " out, its measured radius, or 5 in",
              2 * 25.4,
              12 * 25.4)
          .optional();

  /** Top of a housing that is not measured, 5 in: from memory (mm). */
  private static final double USUAL_HOUSING_MM = 5 * 25.4;

  private static final Field<Double> RAIL_GAP = BarOptions.railGap();

  private final Site site;

  TriangulatedOptions(Site site) {
    this.site = site;
  }

  static List<Field<?>> fields(Catalog catalog) {
    return List.of(
        BarOptions.mounting("lower bars"),
        LOWER_LENGTH,
        UPPER_LENGTH,
        LOWER_ANGLE,
        UPPER_ANGLE,
        BarOptions.LOWER_DROP,
        UPPER_RISE,
        UPPER_SPREAD,
        HOUSING_HEIGHT,
        RAIL_GAP,
        barTube(catalog),
        BarOptions.frameEnd(catalog),
        BarOptions.FRAME_HOLES,
        BarOptions.HOLE_PITCH,
        BarOptions.axleEnd(catalog),
        BarOptions.bracketPlate(catalog),
        BarOptions.LIGHTENING,
        BarOptions.boxingPlate(catalog));
  }

  private static Field<String> barTube(Catalog catalog) {
    return BarOptions.tube("bar_tube", "tube of the bars", catalog);
  }

  Mounting mounting() {
    return Mounting.ofWord(site.options().get(BarOptions.mounting("lower bars")));
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

  /** Height of the upper joints, if the job asks for one. */
  Optional<Double> upperRiseMm() {
    return site.options().find(UPPER_RISE);
  }

  double upperSpreadMm() {
    return site.options().get(UPPER_SPREAD);
  }

  double housingHeightMm() {
    return site.options()
        .find(HOUSING_HEIGHT)
        .orElseGet(() -> site.chassis().axle().housingRadiusMm().orElse(USUAL_HOUSING_MM));
  }

  double railGapMm() {
    return site.options().get(RAIL_GAP);
  }

  BarMakeUp bars() {
    return BarOptions.makeUp(site, barTube(site.catalog()));
  }

  PlateMaterial boxing() {
    return site.catalog().plate(site.options().get(BarOptions.boxingPlate(site.catalog())));
  }
}

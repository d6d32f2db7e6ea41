package trammel.plugins.threelink;

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

/** The options of three links and a lateral bar, as a job sets them. */
final class ThreeLinkOptions {
  static final Field<Double> LOWER_LENGTH =
      BarOptions.inches(
          "lower_length", "lower bars, joint centre to joint centre at ride", 10, 60, 24);
  static final Field<Double> UPPER_LENGTH =
      BarOptions.inches(
          "upper_length", "upper bar, joint centre to joint centre at ride", 8, 60, 18);
  static final Field<Double> LOWER_ANGLE =
      BarOptions.levelAngle("lower_angle", "rise of the lower bars to the front at ride", 1);
  static final Field<Double> UPPER_ANGLE =
      BarOptions.levelAngle("upper_angle", "fall of the upper bar to the front at ride", 1.5);
  static final Field<String> UPPER_SIDE =
      Field.choice(
              "upper_side",
              "rail along which the one upper bar runs; off the middle it shifts load from wheel to"
                  + " wheel under drive and braking",
              List.of("left", "right"))
          .calling(
              Map.of(
                  "left",
                  "upper bar along the left rail",
                  "right",
                  "upper bar along the right rail"))
          .withDefault("right");
  static final Field<Double> RAIL_GAP = BarOptions.railGapFromVehicle();
  static final Field<String> LATERAL_SIDE =
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
  static final Field<Double> LATERAL_RISE =
      BarOptions.inches("lateral_rise", "lateral bar above the axle's centre", -6, 12, 2);

  private final Site site;

  ThreeLinkOptions(Site site) {
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
        UPPER_SIDE,
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

  <T> T get(Field<T> field) {
    return site.options().get(field);
  }

  /** An option that the vehicle decides where the job does not. */
  Optional<Double> find(Field<Double> field) {
    return site.options().find(field);
  }

  Mounting mounting() {
    return Mounting.ofWord(get(BarOptions.mounting("bars")));
  }

  boolean upperOnLeft() {
    return get(UPPER_SIDE).equals("left");
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

  PlateMaterial boxing() {
    return site.catalog().plate(get(BarOptions.boxingPlate(site.catalog())));
  }
}

package trammel.planning.options;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.bar.BarMakeUp;
import trammel.brackets.bar.HoleRow;
import trammel.brackets.bar.Mounting;
import trammel.brackets.material.BarMaterial;
import trammel.brackets.material.EndFitting;
import trammel.brackets.material.PlateMaterial;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Rails;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.Site;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.trade.steel.RoundTube;

/**
 * The options that linkages of bars share. Every one has a default; a default out of the catalog is
 * the entry that comes nearest to the usual size.
 */
public final class BarOptions {
  private static final double INCH_MM = 25.4;

  /** 1 1/2 x .120 in, the usual bar tube: common practice, no source. */
  private static final double USUAL_TUBE_MM = 1.5 * INCH_MM;

  private static final double USUAL_WALL_MM = 0.120 * INCH_MM;
  private static final double USUAL_BRACKET_MM = INCH_MM / 4;
  private static final double USUAL_BOXING_MM = 3 * INCH_MM / 16;

  /** Pick-up holes in each frame bracket. */
  public static final Field<Integer> FRAME_HOLES =
      Field.count(
              "frame_holes",
              "pick-up holes one over the other in each bar's frame bracket, to set it higher or"
                  + " lower later; the layout's joint sits in the middle one",
              1,
              HoleRow.MOST)
          .withDefault(1);

  private static final String HOLES = "holes";

  /** Whether bracket plates are lightened. */
  public static final Field<String> LIGHTENING =
      Field.choice(
              "lightening",
              "holes that take weight out of bracket sides and gussets, only where no cut through"
                  + " the plate gets weaker than its weakest without them",
              List.of("none", HOLES))
          .calling(
              Map.of(
                  "none", "brackets of full plate", HOLES, "brackets with holes that save weight"))
          .withDefault("none");

  /** Distance between pick-up holes. */
  public static final Field<Double> HOLE_PITCH =
      Field.lengthMm(
              "hole_pitch",
              "from pick-up hole to pick-up hole; left out, two hole diameters, up to the next 1/8"
                  + " in",
              INCH_MM / 2,
              4 * INCH_MM)
          .optional();

  /** Lower joints under the axle's centre; left out, proposed from the vehicle. */
  public static final Field<Double> LOWER_DROP =
      lengthFromVehicle(
          "lower_drop",
          "lower joint on the axle, below the axle's centre; left out, 3 in or as much more as"
              + " clears the axle tube",
          1.5,
          8);

  /** Upper joints over the axle's centre; left out, proposed from the vehicle. */
  public static final Field<Double> UPPER_RISE =
      lengthFromVehicle(
          "upper_rise",
          "upper joint on the axle, above the axle's centre; left out, 4 1/2 in or the height"
              + " nearest to it at which the bracket on the frame finds a flat of the rail",
          1.5,
          14);

  /** Lateral bar behind the axle; left out, proposed from the vehicle. */
  public static final Field<Double> LATERAL_BEHIND =
      lengthFromVehicle(
          "lateral_behind",
          "lateral bar behind the axle's centre; left out, 6 in or as much more as clears the"
              + " centre housing, which is taken as 6 in in radius where it is not measured",
          2,
          24);

  /** Gap to the rails where nothing rises beside them, 1/2 in: common practice, no source. */
  public static final double RAIL_GAP_MM = INCH_MM / 2;

  /**
   * Gaps where brackets rise beside a rail: past its notch's plate and the head of a bolt, and what
   * the axle leans and moves sideways in its travel: common practice, no source.
   */
  private static final double[] WIDE_GAPS_MM = {1.5 * INCH_MM, INCH_MM};

  /** How far brackets of upper bars reach over the axle tube, 4 in: from memory. */
  private static final double OVER_TUBE_MM = 4 * INCH_MM;

  private BarOptions() {}

  private static Field<Double> lengthFromVehicle(
      String key, String help, double least, double most) {
    return Field.lengthMm(key, help, least * INCH_MM, most * INCH_MM).optional();
  }

  /** On which side of the rails the bars run. */
  public static Field<String> mounting(String bars) {
    return Field.choice(
            "mounting",
            "side of the frame rails on which the "
                + bars
                + " run: between them or outside them; left out, outside where there is no room"
                + " between",
            Mounting.words())
        .calling(
            Map.of(
                Mounting.INBOARD.word(),
                bars + " between the frame rails",
                Mounting.OUTBOARD.word(),
                bars + " outside the frame rails"))
        .withDefault(Mounting.INBOARD.word());
  }

  /** A length between two limits in inches. */
  public static Field<Double> inches(
      String key, String help, double least, double most, double usual) {
    return Field.lengthMm(key, help, least * INCH_MM, most * INCH_MM).withDefault(usual * INCH_MM);
  }

  /** A side-view angle from level, within ten degrees. */
  public static Field<Double> levelAngle(String key, String help, double usualDeg) {
    return Field.levelAngleRad(key, help, Math.toRadians(-10), Math.toRadians(10))
        .withDefault(Math.toRadians(usualDeg));
  }

  /** Gap between bracket and rail. */
  public static Field<Double> railGap() {
    return inches(
        "rail_gap",
        "gap between the outside of a bracket and the rail face where they come closest, room for"
            + " the bolt's head",
        0.25,
        4,
        RAIL_GAP_MM / INCH_MM);
  }

  /** The gap of bars of which some go to the axle above its tube. */
  public static Field<Double> railGapFromVehicle() {
    return lengthFromVehicle(
        "rail_gap",
        "gap between the outside of a bracket and the rail face where they come closest, room for"
            + " the bolt's head; left out, 1 1/2 in where brackets over the axle tube rise beside"
            + " the rail and there is that much room, else 1 in or 1/2 in",
        0.25,
        4);
  }

  /**
   * What bars that go to the axle above its tube become with the widest gap to the rails for which
   * there is room.
   *
   * @param chosen the gap if the job sets it
   * @param propose lays them out with a gap (mm)
   * @throws UnworkableLayoutException if there is no room with the least
   */
  public static <T> T withGap(Optional<Double> chosen, Chassis chassis, DoubleFunction<T> propose) {
    if (chosen.isPresent()) {
      return propose.apply(chosen.get());
    }
    Rails rails = chassis.rails();
    double overTubeMm =
        rails.undersideMm(0) - chassis.axleCentre().zMm() - chassis.axle().tubeRadiusMm();
    if (overTubeMm < chassis.travel().bumpMm() + OVER_TUBE_MM) {
      for (double gapMm : WIDE_GAPS_MM) {
        try {
          return propose.apply(gapMm);
        } catch (UnworkableLayoutException noRoomForIt) {
          // The next is narrower.
          continue;
        }
      }
    }
    return propose.apply(RAIL_GAP_MM);
  }

  /** A round tube for bars. */
  public static Field<String> tube(String key, String help, Catalog catalog) {
    List<String> keys = new ArrayList<>();
    String nearest = "";
    double leastOff = Double.POSITIVE_INFINITY;
    for (BarMaterial material : catalog.bars().values()) {
      if (material.form() instanceof RoundTube round) {
        keys.add(material.key());
        double off =
            Math.abs(round.outsideMm() - USUAL_TUBE_MM) + Math.abs(round.wallMm() - USUAL_WALL_MM);
        if (off < leastOff) {
          leastOff = off;
          nearest = material.key();
        }
      }
    }
    return Field.choice(key, help, keys).withDefault(nearest);
  }

  /** The joint on the frame: threaded if there is one, so that the bar can be set. */
  public static Field<String> frameEnd(Catalog catalog) {
    return end(
        "frame_end",
        "joint at the frame end of each bar; a threaded one sets the length; with axle_end left out"
            + " too, both are the usual size or the weakest that are strong enough",
        true,
        catalog);
  }

  /** The joint on the axle: a welded barrel if there is one. */
  public static Field<String> axleEnd(Catalog catalog) {
    return end("axle_end", "joint at the axle end of each bar", false, catalog);
  }

  /** Among the joints of the kind the widest sleeve of 2 in or less is the usual one. */
  private static Field<String> end(String key, String help, boolean threaded, Catalog catalog) {
    List<String> keys = List.copyOf(catalog.ends().keySet());
    String usual = keys.get(0);
    double widest = 0;
    for (EndFitting end : catalog.ends().values()) {
      double widthMm = end.joint().widthMm();
      if (end.threaded() == threaded && widthMm > widest && widthMm <= 2 * INCH_MM + 0.01) {
        widest = widthMm;
        usual = end.key();
      }
    }
    return Field.choice(key, help, keys).withDefault(usual);
  }

  /** Plate for brackets, usually 1/4 in. */
  public static Field<String> bracketPlate(Catalog catalog) {
    return plate("bracket_plate", "plate for brackets", USUAL_BRACKET_MM, catalog);
  }

  /** Plate for boxing, usually 3/16 in. */
  public static Field<String> boxingPlate(Catalog catalog) {
    return plate("boxing_plate", "plate that closes a channel rail", USUAL_BOXING_MM, catalog);
  }

  /**
   * What the bars of a site are made of.
   *
   * @param tube which of the options names the tube
   */
  public static BarMakeUp makeUp(Site site, Field<String> tube) {
    Catalog catalog = site.catalog();
    FieldValues options = site.options();
    EndFitting frameEnd = catalog.end(options.get(frameEnd(catalog)));
    return new BarMakeUp(
        catalog.bar(options.get(tube)),
        frameEnd,
        catalog.end(options.get(axleEnd(catalog))),
        catalog.plate(options.get(bracketPlate(catalog))),
        HoleRow.of(options.get(FRAME_HOLES), options.find(HOLE_PITCH), frameEnd.joint()),
        options.get(LIGHTENING).equals(HOLES));
  }

  private static Field<String> plate(String key, String help, double usualMm, Catalog catalog) {
    List<String> keys = List.copyOf(catalog.plates().keySet());
    String nearest = keys.get(0);
    double leastOff = Double.POSITIVE_INFINITY;
    for (PlateMaterial material : catalog.plates().values()) {
      double off = Math.abs(material.form().thicknessMm() - usualMm);
      if (off < leastOff) {
        leastOff = off;
        nearest = material.key();
      }
    }
    return Field.choice(key, help, keys).withDefault(nearest);
  }
}

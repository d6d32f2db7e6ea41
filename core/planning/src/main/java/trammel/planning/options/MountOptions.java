package trammel.planning.options;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.brackets.material.BarMaterial;
import trammel.brackets.material.PlateMaterial;
import trammel.brackets.material.Shock;
import trammel.brackets.mount.AxleTravel;
import trammel.brackets.mount.Crossmember;
import trammel.brackets.mount.Legs;
import trammel.brackets.mount.MountRoom;
import trammel.brackets.mount.MountStock;
import trammel.brackets.mount.ShockStance;
import trammel.engine.layout.Layout;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.Site;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.trade.steel.RectangularTube;

/** The options that mounts of springs and shocks share. */
public final class MountOptions {
  private static final double INCH_MM = 25.4;

  /** Square tube of 2 in, the usual shock crossmember: common practice, no source. */
  private static final double USUAL_TUBE_MM = 2 * INCH_MM;

  /** Height of the tube under coil-overs, 3 in: common practice, no source. */
  private static final double DEEP_TUBE_MM = 3 * INCH_MM;

  /** A corner light enough for coil-overs on the usual tube, 550 lb: common practice, no source. */
  private static final double LIGHT_CORNER_KG = 550 * 0.45359237;

  private static final double USUAL_PLATE_MM = INCH_MM / 4;
  private static final double USUAL_BOXING_MM = 3 * INCH_MM / 16;

  /** A corner that asks for thicker brackets, 800 lb: common practice, no source. */
  private static final double HEAVY_CORNER_KG = 800 * 0.45359237;

  private static final double HEAVY_PLATE_MM = 3 * INCH_MM / 8;

  /** A lean within both fields' ranges that is tried where the usual one finds no place. */
  private static final double OTHER_LEAN_DEG = 5;

  private static final double OTHER_HEIGHT_IN = -4.5;

  private MountOptions() {}

  /**
   * What mounts of springs and shocks are made of: as the options choose it, and where they leave
   * the brackets' plate open on a heavy corner, of thicker plate.
   */
  public static MountStock stock(Site site) {
    MountStock stock = stock(site.options(), site.catalog());
    boolean isHeavy = site.chassis().masses().sprungPerRearCornerKg() > HEAVY_CORNER_KG;
    return isHeavy && !site.options().isWritten(bracketPlate(site.catalog()))
        ? stock.of(nearestPlate(site.catalog(), HEAVY_PLATE_MM))
        : stock;
  }

  /**
   * What mounts of coil-overs are made of, whose crossmember carries the vehicle: on all but light
   * corners, where the options leave it open, of the deeper tube, and with legs that lap the rails
   * further.
   */
  public static MountStock stockUnderSprings(Site site) {
    MountStock stock = stock(site);
    Catalog catalog = site.catalog();
    boolean isLight = site.chassis().masses().sprungPerRearCornerKg() <= LIGHT_CORNER_KG;
    return isLight || site.options().isWritten(crossmember(catalog))
        ? stock
        : stock.of(catalog.bar(nearestTube(catalog, DEEP_TUBE_MM)));
  }

  /** What mounts are made of as a job's options choose it. */
  public static MountStock stock(FieldValues options, Catalog catalog) {
    return new MountStock(
        catalog.plate(options.get(bracketPlate(catalog))),
        catalog.bar(options.get(crossmember(catalog))),
        catalog.plate(options.get(boxingPlate(catalog))),
        catalog.boltSizes());
  }

  /** What a crossmember above or below the rails stands on. */
  public static Field<String> legs() {
    return Field.choice(
            "legs",
            "what a crossmember above or below the rails stands on: pieces of its tube, or plates"
                + " flat on the rails; left out, tube, or plates where a bar or its bracket is in"
                + " the way of tube",
            Legs.words())
        .optional();
  }

  /**
   * What a planned crossmember stands on.
   *
   * @param onTubes the crossmember on pieces of its tube
   */
  public static Legs legs(FieldValues options, Layout layout, Crossmember onTubes) {
    Optional<String> chosen = options.find(legs());
    if (chosen.isPresent() || onTubes.isBetweenRails()) {
      return chosen.map(Legs::ofWord).orElse(Legs.TUBE);
    }
    AxleTravel travel = new AxleTravel(layout.chassis(), layout.guide());
    return new MountRoom(layout.chassis(), layout.guide(), travel).legs(onTubes.room());
  }

  /** The legs that a proposal tries, one after the other. */
  public static List<Legs> legsToTry(FieldValues options) {
    return options.find(legs()).map(Legs::ofWord).map(List::of).orElse(List.of(Legs.values()));
  }

  /**
   * The ways in which a proposal tries to stand shocks up: the usual one first, then with the one
   * or the other changed that the job leaves open.
   *
   * @param lean the field of their lean
   */
  public static List<ShockStance> stancesToTry(FieldValues options, Field<Double> lean) {
    double leanRad = options.get(lean);
    double heightMm = options.get(lowerHeight());
    List<ShockStance> stances = new ArrayList<>(List.of(new ShockStance(leanRad, heightMm)));
    if (!options.isWritten(lean)) {
      stances.add(new ShockStance(Math.toRadians(OTHER_LEAN_DEG), heightMm));
    }
    if (!options.isWritten(lowerHeight())) {
      stances.add(new ShockStance(leanRad, OTHER_HEIGHT_IN * INCH_MM));
    }
    return stances;
  }

  /** Lean of shocks inward, from upright. */
  public static Field<Double> lean(String key, double leastDeg, double mostDeg, double usualDeg) {
    return Field.angleRad(
            key,
            "lean inward from upright, from the axle up, at ride; left out, the usual one, or where"
                + " it finds no place clear of the brackets beside it, 5 degrees",
            Math.toRadians(leastDeg),
            Math.toRadians(mostDeg))
        .withDefault(Math.toRadians(usualDeg));
  }

  /** Lower mounts of the shocks above the axle's centre. */
  public static Field<Double> lowerHeight() {
    return Field.lengthMm(
            "lower_height",
            "lower shock mount above the axle's centre, negative below it; left out, the usual one,"
                + " or where it finds no place clear of the brackets beside it, 4 1/2 in below",
            -6 * INCH_MM,
            6 * INCH_MM)
        .withDefault(-3 * INCH_MM);
  }

  /** The shock; without it one is chosen. */
  public static Field<String> shock(Catalog catalog, boolean coilOver) {
    List<String> keys = new ArrayList<>();
    for (Shock shock : shocks(catalog, coilOver)) {
      keys.add(shock.key());
    }
    return Field.choice(
            "shock",
            "shock by its catalog key; left out, the shortest with the travel for bump and droop",
            keys)
        .optional();
  }

  /** The shocks of a catalog with or without a coil spring on them. */
  public static List<Shock> shocks(Catalog catalog, boolean coilOver) {
    List<Shock> shocks = new ArrayList<>();
    for (Shock shock : catalog.shocks().values()) {
      if (shock.coilOver() == coilOver) {
        shocks.add(shock);
      }
    }
    return shocks;
  }

  /** The shock that the job names, or all that can be chosen. */
  public static List<Shock> wanted(FieldValues options, Catalog catalog, boolean coilOver) {
    Optional<String> key = options.find(shock(catalog, coilOver));
    return key.isPresent() ? List.of(catalog.shock(key.get())) : shocks(catalog, coilOver);
  }

  /** Section of the crossmembers. */
  public static Field<String> crossmember(Catalog catalog) {
    return crossmember("square or rectangular tube of crossmembers", catalog);
  }

  /** Section of the crossmember that carries coil-overs. */
  public static Field<String> crossmemberUnderSprings(Catalog catalog) {
    return crossmember(
        "square or rectangular tube of the crossmember; left out, 2 in square, and 3 in deep where"
            + " a corner carries more than 550 lb (250 kg)",
        catalog);
  }

  private static Field<String> crossmember(String help, Catalog catalog) {
    List<String> keys =
        catalog.bars().values().stream()
            .filter(material -> material.form() instanceof RectangularTube)
            .map(BarMaterial::key)
            .toList();
    return Field.choice("crossmember", help, keys).withDefault(nearestTube(catalog, USUAL_TUBE_MM));
  }

  /** The tube that comes nearest to the usual width and a height; empty in an empty catalog. */
  private static String nearestTube(Catalog catalog, double heightMm) {
    String nearest = "";
    double leastOff = Double.POSITIVE_INFINITY;
    for (BarMaterial material : catalog.bars().values()) {
      if (material.form() instanceof RectangularTube tube) {
        double off =
            Math.abs(tube.heightMm() - heightMm) + Math.abs(tube.widthMm() - USUAL_TUBE_MM);
        if (off < leastOff) {
          leastOff = off;
          nearest = material.key();
        }
      }
    }
    return nearest;
  }

  /** Plate for brackets, tabs and seats. */
  public static Field<String> bracketPlate(Catalog catalog) {
    return plate(
        "bracket_plate",
        "plate for brackets, tabs, arms and seats; left out, 1/4 in, 3/8 in where a corner carries"
            + " more than 800 lb (360 kg), and thicker where an air spring's arms would be bent too"
            + " hard at full bump",
        USUAL_PLATE_MM,
        catalog);
  }

  /** Plate that closes a channel rail behind a crossmember. */
  public static Field<String> boxingPlate(Catalog catalog) {
    return plate(
        "boxing_plate",
        "plate that closes a channel rail where a crossmember meets it",
        USUAL_BOXING_MM,
        catalog);
  }

  private static Field<String> plate(String key, String help, double usualMm, Catalog catalog) {
    return Field.choice(key, help, List.copyOf(catalog.plates().keySet()))
        .withDefault(nearestPlate(catalog, usualMm).key());
  }

  /** The plate whose thickness comes nearest. */
  public static PlateMaterial nearestPlate(Catalog catalog, double thicknessMm) {
    PlateMaterial nearest = null;
    for (PlateMaterial material : catalog.plates().values()) {
      if (nearest == null
          || Math.abs(material.form().thicknessMm() - thicknessMm)
              < Math.abs(nearest.form().thicknessMm() - thicknessMm)) {
        nearest = material;
      }
    }
    if (nearest == null) {
      throw new IllegalArgumentException(
          "the catalog has no plate; mounts need one. Add one to the catalog.");
    }
    return nearest;
  }
}

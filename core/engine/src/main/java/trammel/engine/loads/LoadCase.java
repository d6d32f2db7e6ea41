package trammel.engine.loads;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.quantity.Given;

/**
 * One way of loading the rear axle, as data: how hard it is driven or braked, turned, and thrown
 * against a bump, all at once.
 *
 * @param name what it is called, never blank
 * @param driveMultiplier full engine torque times this reaches the wheels, as far as they grip: 0
 *     to coast, 1 for full torque, more for a dropped clutch; up to 10
 * @param brakingG deceleration in g, 0 to 3; driving and braking at once is refused
 * @param corneringG sideways acceleration in g, −3 to 3, positive to the left (a left-hand bend,
 *     which loads the right tyre)
 * @param leftBumpFactor vertical force at the left tyre over what it carries otherwise, 0 to 10; 1
 *     on smooth road
 * @param rightBumpFactor the same at the right tyre
 * @param friction friction of tyre on road, over 0 to 5
 * @param leftBlow a blow on the left wheel
 * @param rightBlow a blow on the right wheel
 */
public record LoadCase(
    String name,
    double driveMultiplier,
    double brakingG,
    double corneringG,
    double leftBumpFactor,
    double rightBumpFactor,
    double friction,
    WheelBlow leftBlow,
    WheelBlow rightBlow) {
  /** Friction of a good street tyre on dry road. Common practice, no source. */
  public static final double DRY_ROAD_FRICTION = 1.0;

  /** A case without a blow on a wheel. */
  public LoadCase(
      String name,
      double driveMultiplier,
      double brakingG,
      double corneringG,
      double leftBumpFactor,
      double rightBumpFactor,
      double friction) {
    this(
        name,
        driveMultiplier,
        brakingG,
        corneringG,
        leftBumpFactor,
        rightBumpFactor,
        friction,
        WheelBlow.NONE,
        WheelBlow.NONE);
  }

  /** The same with blows on the wheels. */
  public LoadCase withBlows(WheelBlow left, WheelBlow right) {
    return new LoadCase(
        name,
        driveMultiplier,
        brakingG,
        corneringG,
        leftBumpFactor,
        rightBumpFactor,
        friction,
        left,
        right);
  }

  /** The same on tyres that hold otherwise. */
  public LoadCase withFriction(double newFriction) {
    return new LoadCase(
        name,
        driveMultiplier,
        brakingG,
        corneringG,
        leftBumpFactor,
        rightBumpFactor,
        newFriction,
        leftBlow,
        rightBlow);
  }

  /**
   * Checks the case.
   *
   * @throws IllegalArgumentException if a number is outside its range, the name is blank, or the
   *     case drives and brakes at once
   */
  public LoadCase {
    if (name.isBlank()) {
      throw Given.refusal("load case name", "blank", "a name", "Name the load case.");
    }
    String of = " of load case " + name;
    Given.within("drive multiplier" + of, driveMultiplier, 0, 10, "", "1 is full torque.");
    Given.within("braking" + of, brakingG, 0, 3, "g", "Give a deceleration as positive.");
    Given.within("cornering" + of, corneringG, -3, 3, "g", "Positive is a left-hand bend.");
    Given.within("left bump factor" + of, leftBumpFactor, 0, 10, "", "1 is smooth road.");
    Given.within("right bump factor" + of, rightBumpFactor, 0, 10, "", "1 is smooth road.");
    Given.within("tyre friction" + of, friction, 0.01, 5, "", "About 1 on dry road.");
    if (driveMultiplier > 0 && brakingG > 0) {
      throw Given.refusal(
          "load case " + name,
          "drives " + Given.text(driveMultiplier) + " and brakes " + Given.text(brakingG) + " g",
          "either driving or braking",
          "Make two load cases of it.");
    }
  }

  /** Whether it loads one side otherwise than the other. */
  public boolean isHanded() {
    return corneringG != 0 || leftBumpFactor != rightBumpFactor || !leftBlow.isAs(rightBlow);
  }

  /** The same case to the other hand, its name with left and right exchanged. */
  public LoadCase mirrored() {
    String swapped = name.replace("left", "\0").replace("right", "left").replace("\0", "right");
    return new LoadCase(
        swapped.equals(name) ? name + ", to the other hand" : swapped,
        driveMultiplier,
        brakingG,
        0 - corneringG,
        rightBumpFactor,
        leftBumpFactor,
        friction,
        rightBlow,
        leftBlow);
  }

  private boolean loadsAs(LoadCase other) {
    return driveMultiplier == other.driveMultiplier
        && brakingG == other.brakingG
        && corneringG == other.corneringG
        && leftBumpFactor == other.leftBumpFactor
        && rightBumpFactor == other.rightBumpFactor
        && friction == other.friction
        && leftBlow.isAs(other.leftBlow)
        && rightBlow.isAs(other.rightBlow);
  }

  /**
   * The cases with the other hand of each that has one, where it is not among them: the
   * driveshaft's torque turns one way only, so the two are not alike.
   */
  public static List<LoadCase> inBothHands(List<LoadCase> cases) {
    List<LoadCase> both = new ArrayList<>(cases);
    for (LoadCase loadCase : cases) {
      LoadCase mirrored = loadCase.mirrored();
      if (loadCase.isHanded() && both.stream().noneMatch(mirrored::loadsAs)) {
        both.add(mirrored);
      }
    }
    return List.copyOf(both);
  }

  /**
   * The cases a job starts from, to be edited as the use of the vehicle asks: launch, braking,
   * cornering, a bump under one wheel, and two combinations. The factors are common practice, no
   * source.
   *
   * @return the cases
   */
  public static List<LoadCase> usual() {
    double mu = DRY_ROAD_FRICTION;
    return List.of(
        new LoadCase("launch", 1.0, 0, 0, 1, 1, mu),
        new LoadCase("braking", 0, 1.0, 0, 1, 1, mu),
        new LoadCase("cornering left", 0, 0, 0.8, 1, 1, mu),
        new LoadCase("cornering right", 0, 0, -0.8, 1, 1, mu),
        new LoadCase("bump under the left wheel", 0, 0, 0, 3, 1, mu),
        new LoadCase("bump under the right wheel", 0, 0, 0, 1, 3, mu),
        new LoadCase("braking into a bump", 0, 0.7, 0, 2, 2, mu),
        new LoadCase("launch out of a left-hand bend", 1.0, 0, 0.5, 1, 1, mu),
        new LoadCase("launch out of a right-hand bend", 1.0, 0, -0.5, 1, 1, mu));
  }
}

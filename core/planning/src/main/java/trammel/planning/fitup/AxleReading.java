package trammel.planning.fitup;

import trammel.engine.layout.Chassis;

/** How the axle sits under the frame, in readings from the floor and the rails. */
enum AxleReading {
  /** Front datum to the left wheel's centre. */
  WHEELBASE_LEFT("wheelbase.left", "front wheel's centre to rear, left"),
  /** Front datum to the right wheel's centre. */
  WHEELBASE_RIGHT("wheelbase.right", "front wheel's centre to rear, right"),
  /** Left rail to the axle tube. */
  DROP_LEFT("axle.drop.left", "left rail's underside square down to the middle of the axle tube"),
  /** Right rail to the axle tube. */
  DROP_RIGHT(
      "axle.drop.right", "right rail's underside square down to the middle of the axle tube"),
  /** Left rail to the left wheel's mounting face. */
  OVERHANG_LEFT("axle.overhang.left", "left rail's outer face to the left wheel-mounting face"),
  /** Right rail to the right wheel's mounting face. */
  OVERHANG_RIGHT("axle.overhang.right", "right rail's outer face to the right wheel-mounting face"),
  /** Pinion from level, as the frame sits. */
  PINION_ANGLE("pinion.angle", "pinion from level as the frame sits now, nose up");

  private final String id;
  private final String what;

  AxleReading(String id, String what) {
    this.id = id;
    this.what = what;
  }

  String id() {
    return id;
  }

  String what() {
    return what;
  }

  boolean left() {
    return this == WHEELBASE_LEFT || this == DROP_LEFT || this == OVERHANG_LEFT;
  }

  /** What it reads with the axle where it belongs (mm; rad for the pinion, at ride). */
  double plan(Chassis chassis, FrameAxes axes) {
    return switch (this) {
      case WHEELBASE_LEFT, WHEELBASE_RIGHT -> chassis.wheelbaseMm();
      case DROP_LEFT, DROP_RIGHT ->
          -axes.from(
                  FitUpSheet.origin(trammel.engine.layout.End.FRAME, chassis),
                  chassis.axleCentre())[2];
      case OVERHANG_LEFT, OVERHANG_RIGHT ->
          chassis.axle().flangeToFlangeMm() / 2 - chassis.rails().outerFaceMm(0);
      case PINION_ANGLE -> chassis.driveline().pinionAngleRad();
    };
  }
}

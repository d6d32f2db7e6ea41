package trammel.engine.checks;

import java.util.List;
import trammel.engine.layout.Layout;

/** The checks that every layout is held to. */
public final class StandardChecks {
  private StandardChecks() {}

  /** All standard checks, in the order of a walk round the axle. */
  public static List<Check> all() {
    return List.of(
        new WheelbaseSquare("wheelbase-square", "axle square to frame, wheelbase left to right"),
        new BarAngle("lower-bar-angle", "lower bars from level at ride", Layout::lower),
        new BarAngle("upper-bar-angle", "upper bars from level at ride", Layout::upper),
        new BarLengthMatch("lower-bar-match", "lower bars, length left to right", Layout::lower),
        new BarLengthMatch("upper-bar-match", "upper bars, length left to right", Layout::upper),
        new LateralBarAngle("lateral-bar-angle", "lateral bar from level at ride"),
        new LateralShift("lateral-shift", "sideways shift of the axle over the travel"),
        new LinkageReach("linkage-reach", "travel that the bars allow"),
        new BarBind("bar-bind", "give of any one bushing because the bars bind, all travel"),
        new JointMisalignment(
            "joint-misalignment", "tilt of any joint of a bar, share of what it allows"),
        new BumpTravel("bump-travel", "bump travel"),
        new AxleToRail("axle-to-rail", "axle tube to rail at full bump"),
        new BumpStopRoom(
            "bump-stop-room", "room from axle tube to rail when the bump stops are met at speed"),
        new Lean("spring-lean", "lean of shock or spring from upright at ride"),
        new SpringToTube("spring-to-tube", "spring or shock to axle tube, all travel"),
        new Clearance(
            "clearance-moving", "what moves to the frame, all travel", ClearanceGroup.FRAME),
        new Clearance(
            "clearance-between", "moving parts to each other, all travel", ClearanceGroup.BETWEEN),
        new Clearance(
            "clearance-housing",
            "the axle's centre housing to bars, springs and frame, all travel",
            ClearanceGroup.HOUSING),
        new Clearance(
            "clearance-tyre",
            "tyres to body, wheel house, rails, bars and springs, all travel",
            ClearanceGroup.TYRE),
        new Clearance(
            "clearance-fuel", "what moves to a fuel tank or fuel line", ClearanceGroup.FUEL),
        new Clearance(
            "clearance-obstacles",
            "what moves to exhaust, floor or running boards",
            ClearanceGroup.MOVED_AWAY),
        new ShockTravel("shock-travel-bump", "shock travel left at full bump", true),
        new ShockTravel("shock-travel-droop", "shock travel left at full droop", false),
        new PinionParallel("pinion-parallel", "pinion parallel to transmission output"),
        new PinionWindUp(
            "pinion-wind-up", "how far drive and braking turn the pinion from where it stands"),
        new JointAngle("front-joint-angle", "front universal joint at ride", true),
        new JointAngle("rear-joint-angle", "rear universal joint at ride", false),
        new TorsionalAcceleration(
            "torsional-acceleration", "unevenness that the two joints leave at ride"),
        new ShaftCriticalSpeed(
            "shaft-critical-speed", "usable speed of the shaft's tube over its speed"),
        new AirLost("air-lost", "joint angle with the air lost at speed, share of what is allowed"),
        new SlipYoke("slip-room", "room left in front of the slip yoke", true),
        new SlipYoke("slip-engagement", "spline still engaged at the slip yoke", false),
        new AntiSquat("anti-squat", "anti-squat"),
        new RollSteer("roll-steer", "roll steer, understeer positive"),
        new AirPressure(
            "air-pressure", "pressure of an air spring at ride, share of what it may hold"),
        new AirSpringHeight(
            "air-spring-height", "room left in the table of an air spring, all travel"),
        new RideFrequency("ride-frequency", "ride frequency at the rear"),
        new BarStrength("bar-strength", "safety factor of the bars on yield and buckling"),
        new BoltStrength(
            "bolt-strength", "safety factor of bars' bolts, grade 8 or class 10.9, fine thread"),
        new JointRating(
            "joint-rating", "force in a bar, share of what its joint may carry in service"),
        new AxleTube("axle-tube", "safety factor of the axle tube, bent and twisted"),
        new NotchStrength(
            "rail-modulus",
            "section modulus of the notched rail to the original",
            NotchedRail.Load.BENDING),
        new NotchStrength(
            "rail-shear",
            "shear that the notched rail bears to the original",
            NotchedRail.Load.SHEAR),
        new NotchStrength(
            "rail-torsion",
            "twist that the notched rail bears to the original",
            NotchedRail.Load.TWIST),
        new UnderBlows(
            new BarStrength(
                "bar-strength-hard",
                "safety factor of the bars under a pothole, kerb or full stop")),
        new UnderBlows(
            new BoltStrength(
                "bolt-strength-hard",
                "safety factor of bars' bolts under a pothole, kerb or full stop")),
        new UnderBlows(
            new JointRating(
                "joint-rating-hard",
                "force in a bar under a pothole, kerb or full stop, share of its joint's rating")),
        new UnderBlows(
            new AxleTube(
                "axle-tube-hard",
                "safety factor of the axle tube under a pothole, kerb or full stop")),
        new LoadedBump("bump-travel-loaded", "bump travel left at full load"),
        new LoadedStopRoom(
            "bump-stop-room-loaded",
            "room from axle tube to rail when bump stops are met at speed, at full load"),
        new LoadedStance(
            new PinionParallel(
                "pinion-parallel-loaded", "pinion parallel to transmission output, at full load"),
            LoadedStance.Angle.PARALLEL),
        new LoadedStance(
            new JointAngle("front-joint-angle-loaded", "front universal joint at full load", true),
            LoadedStance.Angle.FRONT),
        new LoadedStance(
            new JointAngle("rear-joint-angle-loaded", "rear universal joint at full load", false),
            LoadedStance.Angle.REAR),
        new AtFullLoad(
            new AirPressure(
                "air-pressure-loaded",
                "pressure of an air spring at full load, share of what it may hold")),
        new AtFullLoad(
            new RideFrequency("ride-frequency-loaded", "ride frequency at the rear, at full load")),
        new AtFullLoad(
            new BarStrength("bar-strength-loaded", "safety factor of the bars at full load")),
        new AtFullLoad(
            new JointRating(
                "joint-rating-loaded",
                "force in a bar, share of what its joint may carry, at full load")),
        new AtFullLoad(
            new AxleTube("axle-tube-loaded", "safety factor of the axle tube at full load")));
  }
}

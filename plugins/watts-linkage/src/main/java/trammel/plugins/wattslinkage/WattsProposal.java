package trammel.plugins.wattslinkage;

import static trammel.engine.quantity.Amount.length;

import java.util.ArrayList;
import java.util.List;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.bar.BarMakeUp;
import trammel.brackets.bar.BarPlane;
import trammel.brackets.bar.RailSideBars;
import trammel.brackets.barend.RailSidePairs;
import trammel.brackets.barend.RailSidePairs.Pair;
import trammel.engine.clearance.Body;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.AxleHousing;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Duty;
import trammel.engine.layout.End;
import trammel.engine.mechanism.FurtherBody;
import trammel.engine.mechanism.Pivot;
import trammel.engine.motion.BodyPose;
import trammel.engine.quantity.Phrase;
import trammel.planning.extension.Site;
import trammel.planning.options.BarOptions;

/** Places the four bars, the rocker and its two links. */
final class WattsProposal {
  private static final double INCH_MM = 25.4;

  /** Places are chosen in steps of 1/8 in. */
  private static final double STEP_MM = INCH_MM / 8;

  /** Least height of the rocker above ground, 4 in: common practice, no source. */
  private static final double GROUND_MM = 4 * INCH_MM;

  /** A shorter link swings too steeply, 8 in: common practice, no source. */
  private static final double SHORTEST_MM = 8 * INCH_MM;

  private static final double ROUNDING_MM = 1e-6;

  private final Chassis chassis;
  private final WattsOptions options;
  private final BarMakeUp makeUp;
  private final BarMakeUp links;
  private final RockerForm form;

  WattsProposal(Site site) {
    chassis = site.chassis();
    options = new WattsOptions(site);
    makeUp = options.bars();
    links = options.links();
    form =
        RockerForm.of(
            links.axleSeat(),
            site.catalog().boltSizes(),
            options.carrierTube().tube().outsideDiameterMm() / 2);
  }

  AxleGuide guide() {
    return BarOptions.withGap(options.railGapMm(), chassis, this::guide);
  }

  private AxleGuide guide(double gapMm) {
    BarPlane plane =
        BarPlane.of(
            chassis,
            options.mounting(),
            gapMm,
            makeUp.halfAcrossMm(),
            Math.max(options.lowerLengthMm(), options.upperLengthMm()));
    List<Bar> bars = new ArrayList<>(along(plane));
    requireRoomBesideHousing(plane);
    Point3 pivot = pivot();
    double armMm = armMm();
    bars.add(link(Rocker.UPPER_LINK, pivot, options.upperLinkSide(), armMm));
    bars.add(link(Rocker.LOWER_LINK, pivot, -options.upperLinkSide(), -armMm));
    FurtherBody rocker =
        new FurtherBody(Rocker.NAME, new Pivot.Pin(BodyPose.AXLE, pivot, new Vector3(1, 0, 0)));
    List<Body> solids = new RockerBodies(form, chassis, pivot, armMm).all();
    return new AxleGuide(bars, List.of(rocker), List.of(), solids);
  }

  private List<Bar> along(BarPlane plane) {
    RailSideBars beside = new RailSideBars(chassis, plane, makeUp);
    return new RailSidePairs(
            beside,
            new Pair(options.lowerLengthMm(), options.lowerAngleRad(), options.lowerDropMm()),
            new Pair(options.upperLengthMm(), options.upperAngleRad(), options.upperRiseMm()))
        .bars();
  }

  private void requireRoomBesideHousing(BarPlane plane) {
    AxleHousing axle = chassis.axle();
    double neededMm = form.armOutMm(axle) + form.landRadiusMm();
    double foundMm = plane.leftMm() - makeUp.halfAcrossMm();
    if (!(foundMm >= neededMm - ROUNDING_MM)) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the arms that carry the rocker stand on the axle tube beside the centre"
                  + " housing and reach out to {} from the centre plane; the brackets of the"
                  + " bars begin at {}, so {} is missing. Choose mounting: outboard, a"
                  + " smaller rail_gap or a thinner carrier_tube.",
              length(neededMm),
              length(foundMm),
              length(neededMm - foundMm)));
    }
  }

  private Point3 pivot() {
    double behindMm = behindMm();
    double upMm = chassis.axleCentre().zMm() + riseMm(behindMm);
    double lowestMm = upMm - options.rockerArmMm() - form.tipMm();
    if (!(lowestMm >= GROUND_MM)) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the rocker would hang {} above the ground; it needs {} at least. Set"
                  + " rocker_rise higher or rocker_arm shorter by {}.",
              length(lowestMm),
              length(GROUND_MM),
              length(GROUND_MM - lowestMm)));
    }
    return new Point3(-behindMm, 0, upMm);
  }

  private double behindMm() {
    AxleHousing axle = chassis.axle();
    double housingMm = axle.housingRadiusMm().orElse(axle.tubeRadiusMm());
    double neededMm = housingMm + form.aheadMm();
    if (options.rockerBehindMm().isEmpty()) {
      double radiusMm = axle.takenHousingRadiusMm();
      return STEP_MM * Math.ceil((radiusMm + form.aheadMm()) / STEP_MM - ROUNDING_MM);
    }
    double behindMm = options.rockerBehindMm().get();
    if (!(behindMm >= neededMm - ROUNDING_MM)) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the rocker is {} behind the axle's centre; its plates and the plate and"
                  + " bolt ahead of it need {} to clear the axle. Set rocker_behind to that"
                  + " or more, or leave it out.",
              length(behindMm),
              length(neededMm)));
    }
    return behindMm;
  }

  private double riseMm(double behindMm) {
    if (options.rockerRiseMm().isPresent()) {
      return options.rockerRiseMm().get();
    }
    double highestMm =
        chassis.rails().undersideMm(-behindMm)
            - links.frameSeat().reachMm()
            - options.rockerArmMm()
            - chassis.axleCentre().zMm();
    return Math.min(0, STEP_MM * Math.floor(highestMm / STEP_MM + ROUNDING_MM));
  }

  private double armMm() {
    double armMm = options.rockerArmMm();
    if (!(armMm >= form.leastArmMm() - ROUNDING_MM)) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "rocker_arm is {}; the barrel of a link's joint and the shell of the"
                  + " pivot need {} from centre to centre. Set rocker_arm to that or more,"
                  + " or choose a joint with a smaller barrel.",
              length(armMm),
              length(form.leastArmMm())));
    }
    return armMm;
  }

  private Bar link(String name, Point3 pivot, int side, double upMm) {
    double acrossMm =
        chassis.rails().innerFaceMm(pivot.xMm())
            - links.frameSeat().joint().barrelRadiusMm()
            - options.railGapMm().orElse(BarOptions.RAIL_GAP_MM);
    if (!(acrossMm >= SHORTEST_MM)) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the links of the rocker would be {} long; they need {} at least. Choose"
                  + " a smaller rail_gap or a joint with a smaller barrel.",
              length(acrossMm),
              length(SHORTEST_MM)));
    }
    double highMm = pivot.zMm() + upMm;
    Point3 frame = new Point3(pivot.xMm(), side * acrossMm, highMm);
    Point3 rocker = new Point3(pivot.xMm(), 0, highMm);
    return links.bar(name, Duty.SIDEWAYS.only(), frame, rocker).withBody(End.AXLE, Rocker.NAME);
  }
}

package trammel.planning.vehicle;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import trammel.assembly.Assembly;
import trammel.assembly.Compound;
import trammel.assembly.Mate;
import trammel.assembly.PartKind;
import trammel.assembly.Place;
import trammel.assembly.PlacedPart;
import trammel.assembly.Prism;
import trammel.assembly.Solid;
import trammel.assembly.Turned;
import trammel.brackets.work.VehicleParts;
import trammel.engine.clearance.Box;
import trammel.engine.clearance.Capsule;
import trammel.engine.clearance.Cylinder;
import trammel.engine.clearance.Shape;
import trammel.engine.clearance.Sphere;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.AxleHousing;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Driveline;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Obstacle;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.trade.plates.Arc;
import trammel.trade.plates.Edge;
import trammel.trade.plates.Loop;
import trammel.trade.plates.Point2;
import trammel.trade.plates.Straight;

/**
 * The vehicle's own parts as solids: rails with their notch, axle, housing, wheels and tyres, shaft
 * and what stands in the way. Their weight is in the vehicle's, so they add none.
 */
final class VehicleBodies {
  private static final double INCH_MM = 25.4;

  /** Diameter of a driveshaft that is not measured, 3 1/2 in: from memory (mm). */
  private static final double USUAL_SHAFT_MM = 3.5 * INCH_MM;

  /** A rim's radius as a share of the tyre's, for the picture: common practice, no source. */
  private static final double RIM_SHARE = 0.62;

  /** Thickness of a wheel's disc and rim, for the picture (mm). */
  private static final double WHEEL_MM = 8;

  /** Shoulder of a tyre, for the picture (mm). */
  private static final double SHOULDER_MM = INCH_MM;

  private final Layout layout;
  private final Chassis chassis;
  private final Catalog catalog;
  private final List<PlacedPart> parts = new ArrayList<>();
  private final List<Mate> mates = new ArrayList<>();

  VehicleBodies(Layout layout, Catalog catalog) {
    this.layout = layout;
    this.chassis = layout.chassis();
    this.catalog = catalog;
    addRails();
    addAxle();
    addWheels();
    addShaft();
    addObstacles();
  }

  List<PlacedPart> parts() {
    return parts;
  }

  List<Mate> mates() {
    return mates;
  }

  private void add(String id, String carrier, Place place, Solid solid, Phrase why) {
    parts.add(new PlacedPart(id, id, PartKind.VEHICLE, carrier, place, solid, 0, why));
  }

  private void hold(String part, String onto) {
    mates.add(new Mate(Mate.Kind.OF_THE_VEHICLE, part, onto, 0));
  }

  private void addRails() {
    double foremostMm =
        layout.bars().stream().mapToDouble(bar -> bar.frame().xMm()).max().orElse(0);
    RailForm form =
        new RailForm(chassis.rails(), new NotchWork(layout, catalog).notch(), foremostMm);
    for (boolean left : new boolean[] {true, false}) {
      add(
          VehicleParts.rail(left),
          Assembly.FRAME,
          form.place(left),
          form.solid(left),
          chassis.rails().boxed()
              ? Phrase.of("boxed frame rail")
              : Phrase.of("channel frame rail"));
    }
    hold(VehicleParts.rail(true), VehicleParts.rail(false));
  }

  /** Along the axle's line from its middle to the left. */
  private Place axleLine(double leftMm) {
    Point3 centre = chassis.axleCentre();
    return Place.along(new Point3(centre.xMm(), leftMm, centre.zMm()), new Vector3(0, 1, 0));
  }

  private void addAxle() {
    AxleHousing axle = chassis.axle();
    double halfMm = axle.flangeToFlangeMm() / 2;
    add(
        VehicleParts.AXLE_TUBE,
        Assembly.AXLE,
        axleLine(-halfMm),
        Turned.ring(axle.tubeRadiusMm() - axle.tubeWallMm(), axle.tubeRadiusMm(), 2 * halfMm),
        Phrase.of("the axle tube from wheel flange to wheel flange"));
    if (axle.housingRadiusMm().isPresent()
        && axle.housingRadiusMm().getAsDouble() > axle.tubeRadiusMm() + Loop.JOIN_MM) {
      add(
          VehicleParts.HOUSING,
          Assembly.AXLE,
          axleLine(-axle.innerLimitMm()),
          Turned.ring(
              axle.tubeRadiusMm(), axle.housingRadiusMm().getAsDouble(), 2 * axle.innerLimitMm()),
          Phrase.of("the centre housing as it is measured, about the axle's line"));
      hold(VehicleParts.HOUSING, VehicleParts.AXLE_TUBE);
    }
  }

  private void addWheels() {
    double radiusMm = chassis.tyre().freeRadiusMm();
    double rimMm = RIM_SHARE * radiusMm;
    double widthMm = chassis.tyre().widthMm();
    double shoulderMm = Math.min(SHOULDER_MM, Math.min(widthMm / 3, (radiusMm - rimMm) / 3));
    double flangeMm = chassis.axle().flangeToFlangeMm() / 2;
    double trackMm = chassis.axle().trackMm() / 2;
    for (boolean left : new boolean[] {true, false}) {
      double side = left ? 1 : -1;
      add(
          VehicleParts.tyre(left),
          Assembly.AXLE,
          axleLine(side * trackMm - widthMm / 2),
          Turned.through(
              rimMm,
              0,
              radiusMm - shoulderMm,
              0,
              radiusMm,
              shoulderMm,
              radiusMm,
              widthMm - shoulderMm,
              radiusMm - shoulderMm,
              widthMm,
              rimMm,
              widthMm),
          Phrase.of("the rear tyre at its size"));
      add(
          VehicleParts.wheel(left),
          Assembly.AXLE,
          Place.RIDE,
          new Compound(
              List.of(
                  new Compound.Member(
                      axleLine(left ? flangeMm : -flangeMm - WHEEL_MM),
                      Turned.bar(rimMm - WHEEL_MM, WHEEL_MM)),
                  new Compound.Member(
                      axleLine(side * trackMm - widthMm / 2),
                      Turned.ring(rimMm - WHEEL_MM, rimMm, widthMm)))),
          Phrase.of("the rear wheel on its flange"));
      hold(VehicleParts.wheel(left), VehicleParts.AXLE_TUBE);
      hold(VehicleParts.tyre(left), VehicleParts.wheel(left));
    }
  }

  private void addShaft() {
    Driveline driveline = chassis.driveline();
    double radiusMm = driveline.shaftDiameterMm().orElse(USUAL_SHAFT_MM) / 2;
    Point3 pinion = driveline.pinionJoint();
    add(
        VehicleParts.SHAFT,
        VehicleParts.SHAFT,
        Place.along(pinion, pinion.to(driveline.transmissionJoint())),
        Turned.bar(radiusMm, pinion.distanceMm(driveline.transmissionJoint())),
        Phrase.of("the driveshaft from joint to joint"));
    hold(VehicleParts.SHAFT, VehicleParts.AXLE_TUBE);
    hold(VehicleParts.SHAFT, VehicleParts.rail(true));
  }

  private void addObstacles() {
    Set<String> names = new HashSet<>();
    parts.forEach(part -> names.add(part.id()));
    for (Obstacle obstacle : chassis.obstacles()) {
      String name = obstacle.name();
      while (!names.add(name)) {
        name = name + ", another";
      }
      Compound.Member form = form(obstacle.shape());
      add(name, Assembly.FRAME, form.place(), form.solid(), Phrase.of("stands there at ride"));
      hold(name, VehicleParts.rail(true));
    }
  }

  private static Compound.Member form(Shape shape) {
    if (shape instanceof Box box) {
      Place middle = Place.of(box.centre(), box.lengthwise(), box.crosswise());
      return new Compound.Member(
          middle.shifted(0, 0, -box.halfHeightMm()),
          Prism.block(2 * box.halfLengthMm(), 2 * box.halfWidthMm(), 2 * box.halfHeightMm()));
    }
    if (shape instanceof Cylinder cylinder) {
      return new Compound.Member(
          Place.along(cylinder.from(), cylinder.from().to(cylinder.to())),
          Turned.bar(cylinder.radiusMm(), cylinder.lengthMm()));
    }
    if (shape instanceof Capsule capsule && capsule.lengthMm() > Loop.JOIN_MM) {
      return new Compound.Member(
          Place.along(capsule.from(), capsule.from().to(capsule.to())),
          capsule(capsule.radiusMm(), capsule.lengthMm()));
    }
    Sphere ball =
        shape instanceof Sphere sphere
            ? sphere
            : new Sphere(((Capsule) shape).from(), ((Capsule) shape).radiusMm());
    return new Compound.Member(Place.at(ball.centre()), capsule(ball.radiusMm(), 0));
  }

  /** A round bar with half-ball ends; a ball where it has no length. */
  private static Solid capsule(double radiusMm, double lengthMm) {
    List<Edge> edges = new ArrayList<>(4);
    edges.add(Arc.about(new Point2(0, 0), radiusMm, -Math.PI / 2, Math.PI / 2));
    if (lengthMm > 0) {
      edges.add(new Straight(new Point2(radiusMm, 0), new Point2(radiusMm, lengthMm)));
    }
    edges.add(Arc.about(new Point2(0, lengthMm), radiusMm, 0, Math.PI / 2));
    edges.add(new Straight(new Point2(0, lengthMm + radiusMm), new Point2(0, -radiusMm)));
    return new Turned(new Loop(snapped(edges)));
  }

  /** Sines and cosines of quarter turns are a hair off: ends on the axis lie on it. */
  private static List<Edge> snapped(List<Edge> edges) {
    List<Edge> exact = new ArrayList<>(edges.size());
    for (Edge edge : edges) {
      exact.add(
          edge instanceof Arc arc
              ? new Arc(onAxis(arc.from()), onAxis(arc.to()), arc.centre(), true)
              : edge);
    }
    return exact;
  }

  private static Point2 onAxis(Point2 point) {
    return Math.abs(point.xMm()) < Loop.JOIN_MM ? new Point2(0, point.yMm()) : point;
  }
}

package trammel.planning.draft;

import java.util.ArrayList;
import java.util.List;
import trammel.brackets.material.EndFitting;
import trammel.brackets.material.PlateMaterial;
import trammel.engine.checks.Adjustment;
import trammel.engine.checks.Change;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.layout.Joint;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.reading.quantity.QuantityPrinter;

/** Says which fields of the job file make a change that the engine has tried. */
public final class FieldChanges {
  /** Places after the point, so that what is written is what was tried. */
  private static final int INCH_PLACES = 4;

  private static final int ANGLE_PLACES = 3;

  private static final double SAME_PLATE_MM = 0.1;

  private final Draft draft;
  private final QuantityPrinter printer;

  /**
   * @param draft the job whose layout was judged
   */
  public FieldChanges(Draft draft) {
    this.draft = draft;
    printer = new QuantityPrinter(draft.linkageSite().units());
  }

  /** The fields that make a change, in the order in which they are to be written. */
  public List<FieldChange> of(Change change) {
    Layout after = change.adjustment().apply(draft.layout(), change.amount());
    Chassis chassis = after.chassis();
    if (change.adjustment() instanceof Adjustment.MoveEnds move) {
      return moved(move, after);
    }
    if (change.adjustment() instanceof Adjustment.MoveBars move) {
      List<FieldChange> both = new ArrayList<>();
      for (End end : List.of(End.FRAME, End.AXLE)) {
        both.addAll(moved(new Adjustment.MoveEnds(move.names(), end, move.direction()), after));
      }
      return both;
    }
    if (change.adjustment() instanceof Adjustment.TurnPinion) {
      return List.of(pinion(chassis));
    }
    if (change.adjustment() instanceof Adjustment.TiltTransmission) {
      String atRide = printer.angle(chassis.driveline().transmissionAngleRad(), ANGLE_PLACES);
      return List.of(new FieldChange("chosen.transmission_angle", atRide), pinion(chassis));
    }
    if (change.adjustment() instanceof Adjustment.ChangeShaft) {
      double longerMm = draft.job().chosen().shaftLongerMm() + change.amount();
      return List.of(new FieldChange("chosen.shaft_longer", length(longerMm)));
    }
    if (change.adjustment() instanceof Adjustment.ChangeBump) {
      return List.of(new FieldChange("chosen.ride.bump", length(chassis.travel().bumpMm())));
    }
    if (change.adjustment() instanceof Adjustment.ChangeDroop) {
      return List.of(new FieldChange("chosen.ride.droop", length(chassis.travel().droopMm())));
    }
    if (change.adjustment() instanceof Adjustment.ThickenBrackets) {
      return List.of(new FieldChange("chosen.linkage_options.bracket_plate", plateKey(after)));
    }
    if (change.adjustment() instanceof Adjustment.FitJoint) {
      return joints(after);
    }
    return List.of(
        new FieldChange(
            "chosen.spring_options.rate", printer.rate(after.springs().get(0).rateNPerMm())));
  }

  private List<FieldChange> joints(Layout after) {
    Bar was = draft.layout().bars().get(0);
    Bar is = after.bars().get(0);
    List<FieldChange> changes = new ArrayList<>(2);
    addJoint(changes, "frame_end", was.frameJoint(), is.frameJoint());
    addJoint(changes, "axle_end", was.axleJoint(), is.axleJoint());
    return changes;
  }

  private void addJoint(List<FieldChange> changes, String option, Joint was, Joint is) {
    for (EndFitting end : draft.linkageSite().catalog().ends().values()) {
      if (!was.name().equals(is.name()) && end.joint().name().equals(is.name())) {
        changes.add(new FieldChange("chosen.linkage_options." + option, end.key()));
        return;
      }
    }
  }

  /** The thinnest plate sold that is as thick as the brackets of a layout. */
  private String plateKey(Layout layout) {
    double neededMm = layout.bars().get(0).bracket().orElseThrow().thicknessMm();
    PlateMaterial thinnest = null;
    for (PlateMaterial plate : draft.linkageSite().catalog().plates().values()) {
      double thicknessMm = plate.form().thicknessMm();
      if (thicknessMm >= neededMm - SAME_PLATE_MM
          && (thinnest == null || thicknessMm < thinnest.form().thicknessMm())) {
        thinnest = plate;
      }
    }
    return thinnest == null ? "a plate of " + length(neededMm) : thinnest.key();
  }

  private FieldChange pinion(Chassis chassis) {
    return new FieldChange(
        "chosen.pinion_angle", printer.angle(chassis.driveline().pinionAngleRad(), ANGLE_PLACES));
  }

  private List<FieldChange> moved(Adjustment.MoveEnds move, Layout after) {
    List<FieldChange> changes = new ArrayList<>();
    for (Bar bar : after.bars()) {
      add(changes, move, bar.name(), bar.point(move.end()));
    }
    for (SpringUnit spring : after.springs()) {
      add(changes, move, spring.name(), spring.point(move.end()));
    }
    for (ShockUnit shock : after.shocks()) {
      add(changes, move, shock.name(), shock.point(move.end()));
    }
    return changes;
  }

  private void add(List<FieldChange> changes, Adjustment.MoveEnds move, String name, Point3 point) {
    if (move.names().contains(name)) {
      String end = move.end() == End.FRAME ? "frame" : "axle";
      changes.add(
          new FieldChange(
              "chosen.pickups." + name + "." + end + "." + axis(move.direction()),
              length(coordinate(move.direction(), point))));
    }
  }

  private static String axis(Direction direction) {
    return switch (direction) {
      case FORWARD -> "forward";
      case OUTBOARD -> "left";
      case UP -> "up";
    };
  }

  private static double coordinate(Direction direction, Point3 point) {
    return switch (direction) {
      case FORWARD -> point.xMm();
      case OUTBOARD -> point.yMm();
      case UP -> point.zMm();
    };
  }

  private String length(double lengthMm) {
    return printer.decimalLength(lengthMm, INCH_PLACES);
  }
}

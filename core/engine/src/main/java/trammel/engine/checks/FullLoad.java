package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.layout.CornerLoads;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Masses;
import trammel.engine.layout.Payload;
import trammel.engine.layout.SpringAtRide;
import trammel.engine.layout.SpringKind;
import trammel.engine.layout.SpringUnit;
import trammel.engine.layout.Travel;
import trammel.engine.quantity.Gravity;

/**
 * A layout at full load. Coils sag under it and lose bump; air springs are raised back to their
 * height, gain pressure and stiffen. Angles and the height of the centre of gravity stay as they
 * are empty.
 */
final class FullLoad {
  /** Bump that is left at least, so that the layout can still be analysed (mm). */
  private static final double LEAST_BUMP_MM = 1;

  private FullLoad() {}

  /** How far the body sags on its coils under what is carried (mm); 0 on air springs. */
  static double sagMm(LayoutAnalysis empty) {
    Payload payload = empty.layout().chassis().masses().payload();
    boolean coils =
        empty.layout().springs().stream().anyMatch(spring -> spring.kind() == SpringKind.COIL);
    double perWheelN = payload.rearKg() / 2 * Gravity.M_PER_S2;
    return coils ? perWheelN / empty.ride().rates().heaveNPerMm() : 0;
  }

  /** The layout with its load. */
  static Layout of(LayoutAnalysis empty) {
    Layout layout = empty.layout();
    Masses loaded = layout.chassis().masses().loaded();
    Travel travel = layout.chassis().travel();
    double sagMm = sagMm(empty);
    Travel left =
        new Travel(Math.max(LEAST_BUMP_MM, travel.bumpMm() - sagMm), travel.droopMm() + sagMm);
    Layout heavier = layout.withChassis(layout.chassis().withMasses(loaded).withTravel(left));
    List<SpringUnit> springs = new ArrayList<>(layout.springs().size());
    for (SpringAtRide spring : CornerLoads.onSprings(heavier, empty.motion())) {
      SpringUnit unit = spring.unit();
      springs.add(
          spring.charge().isPresent() ? unit.withRate(spring.rateNPerMm(unit.lengthMm())) : unit);
    }
    return heavier.withSprings(springs);
  }
}

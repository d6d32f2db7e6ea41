package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.engine.layout.SpringAtRide;
import trammel.engine.layout.SpringKind;
import trammel.engine.springs.AirCharge;
import trammel.engine.springs.RatedAirSpring;

/**
 * Pressure of each air spring under its own load at ride, the greatest share of what it may hold.
 * Each spring by itself: the mean of both sides hides the one that carries more.
 */
record AirPressure(String id, String title) implements Check {

  @Override
  public Measure measure() {
    return Measure.SHARE;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    double most = Double.NEGATIVE_INFINITY;
    String where = "";
    List<Detail> details = new ArrayList<>();
    for (SpringAtRide spring : analysis.ride().loaded()) {
      if (spring.unit().kind() != SpringKind.AIR) {
        continue;
      }
      Optional<AirCharge> charge = spring.charge();
      if (charge.isEmpty()) {
        return new Reading.Unknown(
            spring.unit().air().isEmpty()
                ? spring.unit().name() + " has no load-height table; enter the maker's"
                : spring.unit().name()
                    + " stands outside its load-height table at ride; see the check of its height");
      }
      RatedAirSpring air = spring.unit().air().get();
      double share = charge.get().rideGaugeMPa() / air.highestGaugeMPa();
      String name = spring.unit().name();
      if (share > most) {
        most = share;
        where = name;
      }
      details.add(new Detail(name, Measure.PRESSURE, charge.get().rideGaugeMPa()));
      details.add(new Detail("of at most", Measure.PRESSURE, air.highestGaugeMPa()));
      details.add(new Detail("under", Measure.FORCE, spring.loadN()));
    }
    return details.isEmpty()
        ? new Reading.NotApplicable("there is no air spring")
        : new Reading.Value(most, where, details);
  }

  @Override
  public String advice() {
    return "Fit a larger air spring or one of a higher pressure (chosen.spring_options.air_spring),"
        + " set both further apart, or take weight off that corner.";
  }
}

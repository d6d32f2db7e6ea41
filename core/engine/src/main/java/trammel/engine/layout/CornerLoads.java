package trammel.engine.layout;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.motion.MotionRates;
import trammel.engine.motion.SpringPoint;
import trammel.engine.motion.SpringReading;
import trammel.engine.quantity.Gravity;

/**
 * What each spring carries at ride so that the tyres stand on the scales as they were weighed.
 *
 * <p>By virtual work on the axle: in heave the springs hold up what the rear weighs less axle and
 * wheels, in roll the difference of the two tyres over the track. A pair of springs closer together
 * than the tyres therefore shares the weight more unevenly than the tyres do. Of more than two
 * springs the share with the least squares is taken. Source: statics of a free body.
 */
public final class CornerLoads {
  private static final double N_PER_KG = Gravity.MM_PER_S2 / 1000;

  private CornerLoads() {}

  /** The springs of a layout, each under the load that it carries at ride. */
  public static List<SpringAtRide> onSprings(Layout layout, AxleMotion motion) {
    MotionRates rates = motion.ratesAtRide();
    List<SpringReading> readings = new ArrayList<>(layout.springs().size());
    for (SpringUnit unit : layout.springs()) {
      readings.add(
          new SpringPoint(unit.name(), unit.frame(), unit.axle(), unit.rateNPerMm())
              .at(motion.atRide(), rates, layout.chassis().axle().trackMm()));
    }
    return onSprings(layout, readings);
  }

  /** The springs of a layout from their readings at ride, each under the load that it carries. */
  public static List<SpringAtRide> onSprings(Layout layout, List<SpringReading> atRide) {
    Chassis chassis = layout.chassis();
    List<Double> loadsN = onSpringsN(chassis.masses(), chassis.axle().trackMm(), atRide);
    List<SpringAtRide> loaded = new ArrayList<>(loadsN.size());
    for (int i = 0; i < loadsN.size(); i++) {
      loaded.add(new SpringAtRide(layout.springs().get(i), loadsN.get(i)));
    }
    return loaded;
  }

  /**
   * Loads on the springs.
   *
   * @param masses what the scales say; axle and wheels are taken as even on both sides
   * @param trackMm distance between the middles of the tyres (mm)
   * @param springs the springs at ride with how their lengths change
   * @return what each carries (N), in their order; 0 for one that would have to pull
   */
  public static List<Double> onSpringsN(
      Masses masses, double trackMm, List<SpringReading> springs) {
    double heaveN = (masses.rearAxleKg() - masses.rearUnsprungKg()) * N_PER_KG;
    double rollNmm = (masses.rearLeftKg() - masses.rearRightKg()) * N_PER_KG * trackMm / 2;
    double hh = 0;
    double hr = 0;
    double rr = 0;
    for (SpringReading spring : springs) {
      hh += spring.lengthPerMmHeave() * spring.lengthPerMmHeave();
      hr += spring.lengthPerMmHeave() * spring.lengthMmPerRadRoll();
      rr += spring.lengthMmPerRadRoll() * spring.lengthMmPerRadRoll();
    }
    double determinant = hh * rr - hr * hr;
    boolean holdsRoll = determinant > 1e-9 * hh * rr;
    double heave = holdsRoll ? (rr * heaveN - hr * rollNmm) / determinant : heaveN / hh;
    double roll = holdsRoll ? (hh * rollNmm - hr * heaveN) / determinant : 0;
    List<Double> loadsN = new ArrayList<>(springs.size());
    for (SpringReading spring : springs) {
      double loadN = -(heave * spring.lengthPerMmHeave() + roll * spring.lengthMmPerRadRoll());
      loadsN.add(Math.max(0, loadN));
    }
    return loadsN;
  }
}

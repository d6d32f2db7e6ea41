package trammel.plugins.coilspring;

import static trammel.engine.quantity.Amount.force;
import static trammel.engine.quantity.Amount.length;
import static trammel.engine.quantity.Amount.rate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.mount.AxlePath;
import trammel.brackets.mount.AxleTravel;
import trammel.brackets.mount.MountPractice;
import trammel.brackets.mount.ShockFit;
import trammel.engine.layout.Masses;
import trammel.engine.quantity.Gravity;
import trammel.engine.quantity.Phrase;
import trammel.engine.springs.RideFrequency;
import trammel.planning.catalog.CoilOverSpring;

/**
 * Chooses the coil spring for a shock: the stocked rate nearest to what the ride frequency asks
 * for, and the shortest spring of that rate that stays open at full bump.
 *
 * @param coils springs to choose from
 * @param masses what the scales say
 * @param travel how the axle moves
 */
record CoilChoice(List<CoilOverSpring> coils, Masses masses, AxleTravel travel) {
  /** Eyes, upper seat and collar take 3 in of a coil-over's length: common practice, no source. */
  private static final double HARDWARE_MM = 3 * 25.4;

  /** How far a stocked rate may be from the one asked for, as a share. */
  private static final double WIDEST_SHARE = 0.10;

  /** The ride frequency goes with the root of the rate: 1.36 for a sixth more or less. */
  private static final double WIDEST_LOG_RATE = 2 * Math.log(7.0 / 6);

  private static final double SAME_RATE = 1e-6;

  public CoilChoice {
    coils = List.copyOf(coils);
    if (coils.isEmpty()) {
      throw new UnworkableLayoutException(
          Phrase.of("the catalog has no coil spring to choose from. Add one to the catalog."));
    }
  }

  /**
   * The spring on a shock.
   *
   * @param shock the shock in its place
   * @param frequencyHz ride frequency wanted
   * @param rateNPerMm rate that the job asks for instead
   * @throws UnworkableLayoutException if no stocked spring does
   */
  public CoilFit on(ShockFit shock, double frequencyHz, Optional<Double> rateNPerMm) {
    double ratio = travel.motionRatio(shock.frame(), shock.axle());
    if (!(ratio > 0)) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the spring does not get shorter in bump where it stands; it must. Lean"
                  + " it less, or move its mounts."));
    }
    double cornerKg = masses.sprungPerRearCornerKg();
    double wantedNPerMm =
        rateNPerMm.orElseGet(
            () -> RideFrequency.wheelRateForNPerMm(frequencyHz, cornerKg) / (ratio * ratio));
    double forceN = cornerKg * Gravity.MM_PER_S2 / 1000 / ratio;
    double nearestNPerMm = nearestRate(wantedNPerMm);
    if (rateNPerMm.isPresent()) {
      requireStocked(wantedNPerMm, nearestNPerMm);
    }
    List<Double> rates =
        rateNPerMm.isPresent() ? List.of(nearestNPerMm) : ratesNear(wantedNPerMm, nearestNPerMm);
    for (double rate : rates) {
      Optional<CoilFit> fit = fitting(shock, rate, wantedNPerMm, forceN);
      if (fit.isPresent()) {
        return fit.get();
      }
    }
    throw noneFits(shock, nearestNPerMm, forceN, rates);
  }

  private void requireStocked(double wantedNPerMm, double nearestNPerMm) {
    if (Math.abs(nearestNPerMm - wantedNPerMm) > WIDEST_SHARE * wantedNPerMm) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the rate asked for is {}; the nearest in the catalog is {}, more than"
                  + " 10 % off. Choose a rate from {} to {}, or add the spring to the"
                  + " catalog.",
              rate(wantedNPerMm), rate(nearestNPerMm), rate(leastRate()), rate(mostRate())));
    }
  }

  /** The stocked rates that change the ride frequency by a sixth at most, the nearest first. */
  private List<Double> ratesNear(double wantedNPerMm, double nearestNPerMm) {
    SortedMap<Double, Double> byDistance = new TreeMap<>();
    for (CoilOverSpring coil : coils) {
      double distance = Math.abs(Math.log(coil.rateNPerMm() / wantedNPerMm));
      if (distance <= WIDEST_LOG_RATE) {
        byDistance.putIfAbsent(distance, coil.rateNPerMm());
      }
    }
    List<Double> rates = new ArrayList<>(byDistance.values());
    if (rates.isEmpty() || rates.get(0) != nearestNPerMm) {
      rates.remove(nearestNPerMm);
      rates.add(0, nearestNPerMm);
    }
    return rates;
  }

  private Optional<CoilFit> fitting(
      ShockFit shock, double rateNPerMm, double wantedNPerMm, double forceN) {
    double shockMm = shock.lengthMm();
    AxlePath.Range range = travel.path(shock.axle()).from(shock.frame());
    double bumpMm = shockMm - range.leastMm();
    double droopMm = range.mostMm() - shockMm;
    double squeezedMm = forceN / rateNPerMm;
    for (CoilOverSpring coil : ofRate(rateNPerMm)) {
      double lengthMm = coil.freeLengthMm() - squeezedMm;
      double aboveSolidMm = lengthMm - bumpMm - coil.solidLengthMm();
      if (aboveSolidMm >= MountPractice.ABOVE_SOLID_MM && lengthMm <= shockMm - HARDWARE_MM) {
        return Optional.of(
            new CoilFit(coil, wantedNPerMm, forceN, lengthMm, aboveSolidMm, squeezedMm - droopMm));
      }
    }
    return Optional.empty();
  }

  private UnworkableLayoutException noneFits(
      ShockFit shock, double rateNPerMm, double forceN, List<Double> tried) {
    double shockMm = shock.lengthMm();
    double bumpMm = shockMm - travel.path(shock.axle()).from(shock.frame()).leastMm();
    double squeezedMm = forceN / rateNPerMm;
    List<CoilOverSpring> ofRate = ofRate(rateNPerMm);
    CoilOverSpring longest = ofRate.get(ofRate.size() - 1);
    return new UnworkableLayoutException(
        Phrase.of(
            "a spring of {} is squeezed {} by {} at ride and {} at full bump; with"
                + " {} left above solid its free length less its solid length must be {}"
                + " or more and its length at ride {} or less. The longest in the catalog,"
                + " {}, has {} and {}. {}",
            rate(rateNPerMm),
            length(squeezedMm),
            force(forceN),
            length(squeezedMm + bumpMm),
            length(MountPractice.ABOVE_SOLID_MM),
            length(squeezedMm + bumpMm + MountPractice.ABOVE_SOLID_MM),
            length(shockMm - HARDWARE_MM),
            longest.key(),
            length(longest.freeLengthMm() - longest.solidLengthMm()),
            length(longest.freeLengthMm() - squeezedMm),
            remedy(rateNPerMm, tried)));
  }

  /** Never a stiffer spring where the catalog has none. */
  private Phrase remedy(double rateNPerMm, List<Double> tried) {
    Phrase others =
        tried.size() == 1
            ? Phrase.NONE
            : Phrase.of(
                "None of the {} rates nearest to it fits either, up to {}. ",
                tried.size(),
                rate(tried.stream().mapToDouble(rate -> rate).max().orElseThrow()));
    return rateNPerMm < mostRate() - SAME_RATE
        ? Phrase.of(
            "{}Choose a higher ride_frequency or rate, a longer shock, or ask for less bump.",
            others)
        : Phrase.of(
            "{}It is the stiffest in the catalog: add a stiffer one to it, choose a longer"
                + " shock, or ask for less bump.",
            others);
  }

  private List<CoilOverSpring> ofRate(double rateNPerMm) {
    List<CoilOverSpring> found = new ArrayList<>();
    for (CoilOverSpring coil : coils) {
      if (Math.abs(coil.rateNPerMm() - rateNPerMm) < SAME_RATE) {
        found.add(coil);
      }
    }
    found.sort(Comparator.comparingDouble(CoilOverSpring::freeLengthMm));
    return found;
  }

  private double nearestRate(double wantedNPerMm) {
    double nearest = coils.get(0).rateNPerMm();
    for (CoilOverSpring coil : coils) {
      if (Math.abs(coil.rateNPerMm() - wantedNPerMm) < Math.abs(nearest - wantedNPerMm)) {
        nearest = coil.rateNPerMm();
      }
    }
    return nearest;
  }

  private double leastRate() {
    double least = Double.POSITIVE_INFINITY;
    for (CoilOverSpring coil : coils) {
      least = Math.min(least, coil.rateNPerMm());
    }
    return least;
  }

  private double mostRate() {
    double most = 0;
    for (CoilOverSpring coil : coils) {
      most = Math.max(most, coil.rateNPerMm());
    }
    return most;
  }
}

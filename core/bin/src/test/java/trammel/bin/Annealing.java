package trammel.bin;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import trammel.brackets.UnworkableLayoutException;
import trammel.engine.checks.Check;
import trammel.engine.checks.Judge;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Verdict;
import trammel.planning.catalog.Catalog;
import trammel.planning.draft.Draft;
import trammel.planning.draft.Drafting;
import trammel.planning.draft.Extensions;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.SpringMount;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.planning.job.ObstacleKind;
import trammel.planning.job.Wheelbase;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldKind;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.BadInputException;

/**
 * Another way to search for layouts, to hold the one of the tool against: every field by itself is
 * changed by chance, and what is worse is taken with a chance that falls. Method: Kirkpatrick,
 * Gelatt and Vecchi, Optimization by simulated annealing, Science 220 (1983), 671 to 680. Once
 * every check is good it goes on for a lower price among such layouts. It shares drafting, checks
 * and estimate with the tool's search and nothing of how that one chooses.
 */
final class Annealing {
  private static final double INCH_MM = 25.4;
  private static final double REFUSED = 1e6;
  private static final double HOT = 4;
  private static final double COLD = 0.05;

  /** Shares of a price by which it may rise at first, and in the end. */
  private static final double DEAR = 0.03;

  private static final double CHEAP = 0.0005;

  private final Drafting drafting;
  private final JobDocument start;
  private final List<Turn> turns = new ArrayList<>();
  private final Random random;
  private final ToDoubleFunction<Draft> price;

  /** One field that may be changed: words to choose from, or a range in steps. */
  private record Turn(
      String path, List<String> words, double least, double most, double step, String unit) {
    String any(Random random) {
      return words.isEmpty()
          ? text(least + random.nextDouble() * (most - least))
          : words.get(random.nextInt(words.size()));
    }

    String near(String now, double width, Random random) {
      if (!words.isEmpty()) {
        return any(random);
      }
      double from = Double.parseDouble(now.substring(0, (now + " ").indexOf(' ')));
      double to = from + random.nextGaussian() * Math.max(step, width * (most - least));
      return text(Math.max(least, Math.min(most, to)));
    }

    private String text(double value) {
      return String.format(Locale.ROOT, "%.4f%s", step * Math.rint(value / step), unit);
    }
  }

  /**
   * What is reached.
   *
   * @param values the fields that are set
   * @param draft the layout, if there is one
   * @param penalty 0 where every check is good
   */
  record Reached(Map<String, String> values, Optional<Draft> draft, double penalty) {
    boolean passes() {
      return penalty == 0;
    }
  }

  /**
   * @param job the job as it begins, its linkage, spring and mounting chosen
   * @param price what a layout costs
   */
  Annealing(
      Catalog catalog,
      AxleLinkage linkage,
      SpringMount spring,
      JobDocument job,
      ToDoubleFunction<Draft> price,
      long seed) {
    this.price = price;
    drafting = new Drafting(new Extensions(List.of(linkage), List.of(spring)), catalog);
    start = job;
    random = new Random(seed);
    add("chosen.linkage_options.", linkage.options(catalog));
    add("chosen.spring_options.", spring.options(catalog));
    double bumpIn = JobReader.read(job).chosen().ride().bumpMm() / INCH_MM;
    double droopIn = JobReader.read(job).chosen().ride().droopMm() / INCH_MM;
    turns.add(length("chosen.ride.bump", Math.min(3, bumpIn), Math.max(3, bumpIn) + 0.5));
    turns.add(length("chosen.ride.droop", droopIn - 0.5, droopIn));
    Wheelbase wheelbase = JobReader.read(job).measured().wheelbase();
    double middleIn = (wheelbase.left().mean() + wheelbase.right().mean()) / 2 / INCH_MM;
    turns.add(length("chosen.wheelbase", middleIn, middleIn));
    turns.add(length("chosen.shaft_longer", -3, 3));
    turns.add(new Turn("chosen.transmission_angle", List.of(), -2, 6, 0.25, " deg"));
    turns.add(new Turn("chosen.notch", List.of("flush", "raised"), 0, 0, 0, ""));
    if (!catalog.shaftTubes().isEmpty()) {
      List<String> tubes = List.copyOf(catalog.shaftTubes().keySet());
      turns.add(new Turn("chosen.shaft_tube", tubes, 0, 0, 0, ""));
    }
    String movable =
        JobReader.read(job).measured().obstacles().stream()
            .filter(
                one ->
                    one.kind() == ObstacleKind.EXHAUST
                        || one.kind() == ObstacleKind.TANK
                        || one.kind() == ObstacleKind.BED_FLOOR)
            .map(one -> one.name())
            .reduce((one, other) -> one + ", " + other)
            .orElse("");
    if (!movable.isEmpty()) {
      turns.add(new Turn("chosen.moved_away", List.of("[" + movable + "]"), 0, 0, 0, ""));
    }
  }

  private static Turn length(String path, double leastIn, double mostIn) {
    return new Turn(path, List.of(), leastIn, mostIn, 0.125, " in");
  }

  private void add(String group, List<Field<?>> options) {
    for (Field<?> option : options) {
      if (option.datum().isPresent() || option.key().equals("mounting")) {
        continue;
      }
      String path = group + option.key();
      double least = option.min().orElse(0);
      double most = option.max().orElse(0);
      if (option.kind() == FieldKind.CHOICE && option.choices().size() > 1) {
        turns.add(new Turn(path, option.choices(), 0, 0, 0, ""));
      } else if (option.kind() == FieldKind.LENGTH) {
        turns.add(length(path, least / INCH_MM, most / INCH_MM));
      } else if (option.kind() == FieldKind.ANGLE) {
        turns.add(
            new Turn(path, List.of(), Math.toDegrees(least), Math.toDegrees(most), 0.25, " deg"));
      } else if (option.kind() == FieldKind.NUMBER) {
        turns.add(new Turn(path, List.of(), least, most, 0.01, ""));
      }
    }
  }

  /**
   * The least price among the layouts that pass, after so many were tried; none where none does.
   */
  OptionalDouble cheapest(int tries) {
    Reached now = reached(Map.of());
    int tried = 1;
    for (; tried < tries && !now.passes(); tried++) {
      double share = (double) tried / tries;
      double heat = HOT * Math.pow(COLD / HOT, share);
      Reached next = reached(changed(now.values(), 0.25 * (1 - share)));
      if (isTaken(next.penalty() - now.penalty(), heat)) {
        now = next;
      }
    }
    return now.passes() ? OptionalDouble.of(cheapest(now, tried, tries)) : OptionalDouble.empty();
  }

  private double cheapest(Reached passing, int tried, int tries) {
    Reached now = passing;
    double costs = price.applyAsDouble(now.draft().orElseThrow());
    double least = costs;
    for (int i = tried; i < tries; i++) {
      double share = (double) (i - tried) / (tries - tried);
      Reached next = reached(changed(now.values(), 0.25 * (1 - share)));
      if (!next.passes()) {
        continue;
      }
      double asks = price.applyAsDouble(next.draft().orElseThrow());
      if (isTaken(asks - costs, least * DEAR * Math.pow(CHEAP / DEAR, share))) {
        now = next;
        costs = asks;
      }
      least = Math.min(least, asks);
    }
    return least;
  }

  private boolean isTaken(double worse, double heat) {
    return worse <= 0 || random.nextDouble() < Math.exp(-worse / heat);
  }

  private Map<String, String> changed(Map<String, String> values, double width) {
    Map<String, String> changed = new LinkedHashMap<>(values);
    Turn turn = turns.get(random.nextInt(turns.size()));
    String now = values.get(turn.path());
    if (now != null && random.nextInt(4) == 0) {
      changed.remove(turn.path());
    } else {
      changed.put(turn.path(), now == null ? turn.any(random) : turn.near(now, width, random));
    }
    return changed;
  }

  private Reached reached(Map<String, String> values) {
    JobDocument job = start;
    for (Map.Entry<String, String> one : values.entrySet()) {
      job = job.withValue(one.getKey(), one.getValue());
    }
    try {
      Draft draft = drafting.draft(JobReader.read(job), UnitSystem.US);
      return new Reached(values, Optional.of(draft), penalty(draft));
    } catch (UnworkableLayoutException | BadInputException refused) {
      return new Reached(values, Optional.empty(), REFUSED);
    } catch (IllegalArgumentException impossible) {
      // The engine refuses bars that hold no axle; no such layout can be built.
      return new Reached(values, Optional.empty(), REFUSED);
    }
  }

  private static double penalty(Draft draft) {
    LayoutAnalysis analysis = new LayoutAnalysis(draft.layout(), draft.judge().settings());
    double penalty = 0;
    for (Check check : draft.judge().checks()) {
      if (!check.isOfMeasurements()) {
        penalty += draft.judge().find(check, analysis).map(Annealing::weight).orElse(0.0);
      }
    }
    return penalty;
  }

  private static double weight(Judge.Finding finding) {
    if (finding.verdict() == Verdict.GOOD) {
      return 0;
    }
    Limit limit = finding.limit();
    double nearest =
        Math.abs(finding.value() - limit.goodMin()) < Math.abs(finding.value() - limit.goodMax())
            ? limit.goodMin()
            : limit.goodMax();
    double off =
        Math.min(1, Math.abs(finding.value() - nearest) / Math.max(1e-6, Math.abs(nearest)));
    return (finding.verdict() == Verdict.STOP ? 10 : 1) * (1 + off);
  }
}

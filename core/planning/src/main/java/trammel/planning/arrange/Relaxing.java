package trammel.planning.arrange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import trammel.engine.quantity.Phrase;
import trammel.planning.draft.Draft;
import trammel.planning.job.JobDocument;
import trammel.planning.job.Obstacle;

/**
 * Finds what stands in the way where no layout passes: wishes and measurements are relaxed one at a
 * time, then in twos, and each time the search goes on from the nearest layouts.
 */
final class Relaxing {
  private static final double INCH_MM = 25.4;

  /** How far lengths are relaxed, the least first: 1/2 in to 3 in. */
  private static final double[] MORE_MM = {0.5 * INCH_MM, INCH_MM, 2 * INCH_MM, 3 * INCH_MM};

  /** Kinds of layout from which each relaxation is tried. */
  private static final int KINDS = 2;

  private static final int TRIALS_EACH = 12;
  private static final int MOST_WAYS = 4;

  private final List<BranchSearch> searches;
  private final ShopStep step;
  private final BooleanSupplier stopped;

  /**
   * @param budget how many layouts more may be tried
   */
  Relaxing(List<BranchSearch> searches, ShopStep step, int budget, BooleanSupplier stopped) {
    this.searches = searches;
    this.step = step;
    int end = tried() + budget;
    this.stopped = () -> stopped.getAsBoolean() || tried() >= end;
  }

  /** One wish or measurement with a value that asks for less. */
  private record Relaxed(List<LayoutChange> changes) {
    Edits in(Edits edits) {
      Edits all = edits;
      for (LayoutChange change : changes) {
        all = all.with(change.path(), change.after(), change.reason());
      }
      return all;
    }

    Relaxed and(Relaxed other) {
      List<LayoutChange> both = new ArrayList<>(changes);
      both.addAll(other.changes);
      return new Relaxed(both);
    }
  }

  private int tried() {
    return searches.stream().mapToInt(BranchSearch::tried).sum();
  }

  Conflict conflict() {
    List<BranchSearch> nearest =
        searches.stream()
            .filter(search -> search.best().draft().isPresent())
            .sorted((one, other) -> Double.compare(one.best().penalty(), other.best().penalty()))
            .limit(KINDS)
            .toList();
    if (nearest.isEmpty()) {
      return new Conflict(
          searches.stream().map(search -> search.best().refusal()).limit(1).toList(), List.of());
    }
    Trial best = nearest.get(0).best();
    List<Phrase> remaining = best.open().stream().map(Mending::reason).map(Phrase::text).toList();
    List<List<Relaxed>> all = relaxations(best.draft().orElseThrow(), nearest.get(0).document());
    List<Conflict.Way> ways = new ArrayList<>();
    List<Relaxed> helped = new ArrayList<>();
    for (List<Relaxed> one : all) {
      one.stream()
          .filter(relaxed -> !stopped.getAsBoolean())
          .filter(relaxed -> tried(nearest, relaxed, ways))
          .findFirst();
      helped.add(one.get(one.size() - 1));
      if (ways.size() >= MOST_WAYS) {
        break;
      }
    }
    if (ways.isEmpty()) {
      pairs(nearest, helped, ways);
    }
    return new Conflict(remaining, ways);
  }

  private void pairs(List<BranchSearch> nearest, List<Relaxed> all, List<Conflict.Way> ways) {
    for (int i = 0; i < all.size(); i++) {
      for (int j = i + 1; j < all.size(); j++) {
        if (ways.size() < 2 && !stopped.getAsBoolean()) {
          tried(nearest, all.get(i).and(all.get(j)), ways);
        }
      }
    }
  }

  /** Whether a relaxation lets a layout pass; it is kept with the ways if so. */
  private boolean tried(List<BranchSearch> nearest, Relaxed relaxed, List<Conflict.Way> ways) {
    for (BranchSearch search : nearest) {
      Trial trial = search.relaxed(relaxed.in(search.best().edits()), TRIALS_EACH);
      if (trial.passes()) {
        ways.add(new Conflict.Way(relaxed.changes(), true));
        return true;
      }
    }
    return false;
  }

  private List<List<Relaxed>> relaxations(Draft draft, JobDocument document) {
    List<List<Relaxed>> all = new ArrayList<>();
    all.add(lengths(document, "measured.driveshaft.tube_diameter", 1, "driveshaft's tube"));
    all.add(lengths(document, Dials.RIDE_HEIGHT, 1, "ride height"));
    all.add(lengths(document, Dials.DROOP, -1, "droop travel"));
    all.add(wider(document));
    List<Obstacle> obstacles = draft.job().measured().obstacles();
    for (int i = 0; i < obstacles.size(); i++) {
      Obstacle obstacle = obstacles.get(i);
      if (Mending.isMovable(obstacle)) {
        all.add(
            List.of(
                change(
                    document,
                    Mending.MOVED_AWAY,
                    Mending.list(List.of(obstacle.name())),
                    obstacle.name())));
      }
    }
    all.removeIf(List::isEmpty);
    return all;
  }

  private static Relaxed change(JobDocument document, String path, String text, String what) {
    return new Relaxed(List.of(new LayoutChange(path, Dials.given(document, path), text, what)));
  }

  private List<Relaxed> lengths(JobDocument document, String path, int way, String what) {
    Optional<String> written = Dials.written(document, path);
    List<Relaxed> relaxed = new ArrayList<>();
    if (written.isPresent()) {
      double wasMm = step.value(Dial.Kind.LENGTH, written.get());
      for (double moreMm : MORE_MM) {
        double valueMm = step.stepped(Dial.Kind.LENGTH, wasMm + way * moreMm);
        if (valueMm > INCH_MM) {
          relaxed.add(change(document, path, step.text(Dial.Kind.LENGTH, valueMm), what));
        }
      }
    }
    return relaxed;
  }

  /** Rails further apart, over and between, at both stations. */
  private List<Relaxed> wider(JobDocument document) {
    List<Relaxed> relaxed = new ArrayList<>();
    for (double moreMm : MORE_MM) {
      List<LayoutChange> changes = new ArrayList<>();
      for (String key :
          List.of(
              "outside_at_axle",
              "between_at_axle",
              "outside_at_front_mounts",
              "between_at_front_mounts")) {
        String path = "measured.rails." + key;
        Dials.written(document, path)
            .map(text -> step.value(Dial.Kind.LENGTH, text) + moreMm)
            .ifPresent(
                mm ->
                    changes.add(
                        new LayoutChange(
                            path,
                            Dials.given(document, path),
                            step.text(Dial.Kind.LENGTH, mm),
                            "width of the frame")));
      }
      if (!changes.isEmpty()) {
        relaxed.add(new Relaxed(changes));
      }
    }
    return relaxed;
  }
}

package trammel.planning.arrange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;
import trammel.planning.catalog.Catalog;
import trammel.planning.draft.Draft;
import trammel.planning.draft.Drafting;
import trammel.planning.draft.Extensions;
import trammel.planning.estimate.Estimate;
import trammel.planning.extension.PluginFaultException;
import trammel.planning.job.Job;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.Location;
import trammel.reading.tree.Problem;

/**
 * Searches for layouts of a job that pass every check. Every kind of layout is tried as it is
 * proposed; the effort then goes to those that are nearest, half of them at a time. Method:
 * successive halving, Jamieson and Talwalkar, Non-stochastic best arm identification and
 * hyperparameter optimization, AISTATS 2016, over a {@link BranchSearch} for each kind.
 */
public final class Arranging {
  /** Rounds of halving after the proposals. */
  private static final int ROUNDS = 4;

  /** Share of the effort that is kept for saying why nothing passes. */
  private static final double FOR_CONFLICT = 0.25;

  private static final int LEAST_FOR_CONFLICT = 30;

  /** An answer keeps off STOP under the tolerances on so many vehicles. */
  private static final double SURE_SHARE = 0.9;

  private final Extensions extensions;
  private final Catalog catalog;
  private final Function<Draft, Estimate> quoting;

  /**
   * @param extensions the installed linkages, springs and additions
   * @param catalog what can be bought and done, and the limits
   * @param quoting the estimate of a draft, the same that the quote is made of; asked by several
   *     threads at once; throws {@link trammel.brackets.UnworkableLayoutException} for what cannot
   *     be made
   */
  public Arranging(Extensions extensions, Catalog catalog, Function<Draft, Estimate> quoting) {
    this.extensions = extensions;
    this.catalog = catalog;
    this.quoting = quoting;
  }

  /**
   * Searches.
   *
   * @param document the job file
   * @param wishes what is asked of the search
   * @param listener watches it and may end it
   * @throws BadInputException if the job file is not right, a wish names no field, or its range
   *     cannot be read
   */
  public Arrangement arrange(JobDocument document, Wishes wishes, ArrangeListener listener) {
    Job job = JobReader.read(document);
    ShopStep step = new ShopStep(job.header().units());
    requireFields(wishes, step);
    List<Branch> branches = new Branches(document, job.chosen(), extensions, catalog, wishes).all();
    Run run = new Run(document, wishes, step, listener, branches);
    return run.arrangement();
  }

  private static void requireFields(Wishes wishes, ShopStep step) {
    Set<String> paths = new LinkedHashSet<>(wishes.keep());
    paths.addAll(wishes.vary().keySet());
    for (String path : paths) {
      if (!path.startsWith("chosen") && !path.startsWith("measured.")) {
        throw new BadInputException(
            List.of(
                Problem.error(
                    new Location("search", 0, 0, path),
                    "'" + path + "'",
                    "a field of a job file under chosen or measured",
                    "Give one such as chosen.spring or chosen.ride.bump.")));
      }
    }
    wishes.vary().forEach((path, range) -> new VaryRange(path, range, step).dial());
  }

  /** One search from its start to its end. */
  private final class Run {
    private final JobDocument document;
    private final Wishes wishes;
    private final ShopStep step;
    private final ArrangeListener listener;
    private final Ranking ranking;
    private final List<BranchSearch> searches = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private final AtomicBoolean cut = new AtomicBoolean();

    Run(
        JobDocument document,
        Wishes wishes,
        ShopStep step,
        ArrangeListener listener,
        List<Branch> branches) {
      this.document = document;
      this.wishes = wishes;
      this.step = step;
      this.listener = listener;
      ranking = new Ranking(wishes.goal());
      for (Branch branch : branches) {
        searches.add(
            new BranchSearch(
                branch, bench(document), wishes, extensions, catalog, step, this::isStopped));
      }
    }

    private TrialBench bench(JobDocument job) {
      return new TrialBench(job, new Drafting(extensions, catalog), quoting);
    }

    private boolean isStopped() {
      if (listener.isStopped()) {
        cut.set(true);
      }
      return cut.get();
    }

    Arrangement arrangement() {
      SideBySide sideBySide = new SideBySide(wishes.workers());
      each(sideBySide, searches, BranchSearch::start);
      List<BranchSearch> left = ranked(searches);
      for (int round = 0; round < ROUNDS && !isStopped(); round++) {
        left = left.subList(0, Math.min(left.size(), kept(round)));
        int spare = spare(left.isEmpty() || !left.get(0).best().passes()) / (ROUNDS - round);
        List<BranchSearch> open = left.stream().filter(search -> !search.isDone()).toList();
        if (spare <= 0 || open.isEmpty()) {
          continue;
        }
        int each = Math.max(1, spare / open.size());
        each(sideBySide, open, search -> search.spend(each));
        left = ranked(left);
      }
      return answer();
    }

    /** Half of those of the round before, and no fewer than there are answers to give. */
    private int kept(int round) {
      return Math.max(wishes.layouts() + 1, searches.size() >> round);
    }

    private int spare(boolean keepForConflict) {
      double share = keepForConflict ? 1 - FOR_CONFLICT : 1;
      return (int) (share * wishes.effort()) - tried();
    }

    private int tried() {
      return searches.stream().mapToInt(BranchSearch::tried).sum();
    }

    private void each(
        SideBySide sideBySide,
        List<BranchSearch> some,
        java.util.function.Consumer<BranchSearch> work) {
      List<Optional<RuntimeException>> failures =
          sideBySide.each(
              some,
              search -> {
                if (!isStopped() || search.best() == null) {
                  work.accept(search);
                }
                tell();
              });
      for (int i = 0; i < failures.size(); i++) {
        if (failures.get(i).isPresent()) {
          leaveOut(some.get(i), failures.get(i).get());
        }
      }
    }

    /** A plugin that fails costs its own kinds of layout and nothing else. */
    private void leaveOut(BranchSearch search, RuntimeException failure) {
      if (!(failure instanceof PluginFaultException)) {
        throw failure;
      }
      searches.remove(search);
      if (!remarks.contains(failure.getMessage())) {
        remarks.add(failure.getMessage());
      }
    }

    private synchronized void tell() {
      int passing =
          (int)
              searches.stream()
                  .map(BranchSearch::best)
                  .filter(best -> best != null && best.passes())
                  .count();
      listener.progress(new ArrangeListener.Progress(tried(), wishes.effort(), passing));
    }

    private List<BranchSearch> ranked(List<BranchSearch> some) {
      List<BranchSearch> ranked = new ArrayList<>(some);
      ranked.removeIf(search -> !searches.contains(search));
      ranked.sort(
          Comparator.comparing(BranchSearch::best, ranking.order())
              .thenComparingInt(search -> search.branch().index()));
      return ranked;
    }

    private Relaxing relaxing() {
      int budget = Math.max(LEAST_FOR_CONFLICT, (int) (FOR_CONFLICT * wishes.effort()));
      return new Relaxing(searches, step, budget, this::isStopped);
    }

    private Arrangement answer() {
      List<Trial> ranked =
          new ArrayList<>(ranked(searches).stream().map(BranchSearch::best).toList());
      ranked.removeIf(trial -> trial.draft().isEmpty());
      boolean passes = ranked.stream().anyMatch(Trial::passes);
      List<ArrangedLayout> layouts = new ArrayList<>();
      List<ArrangedLayout> unsure = new ArrayList<>();
      Answers answers = new Answers(document, quoting, wishes.seed());
      for (Trial trial : ranked) {
        if (layouts.size() == wishes.layouts() || passes && !trial.passes()) {
          break;
        }
        Optional<ArrangedLayout> layout = answers.of(trial);
        layout.ifPresent(
            found -> (found.noStopShare() >= SURE_SHARE ? layouts : unsure).add(found));
      }
      for (ArrangedLayout layout : unsure) {
        if (layouts.size() < wishes.layouts()) {
          layouts.add(layout);
        }
      }
      Optional<Conflict> conflict =
          passes || ranked.isEmpty() && searches.isEmpty()
              ? Optional.empty()
              : Optional.of(relaxing().conflict());
      return new Arrangement(layouts, conflict, tried(), cut.get(), remarks);
    }
  }
}

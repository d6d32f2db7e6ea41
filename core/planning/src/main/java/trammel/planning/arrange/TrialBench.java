package trammel.planning.arrange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import trammel.brackets.UnworkableLayoutException;
import trammel.engine.checks.Check;
import trammel.engine.checks.Judge;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Verdict;
import trammel.engine.quantity.Phrase;
import trammel.planning.draft.Draft;
import trammel.planning.draft.Drafting;
import trammel.planning.estimate.Estimate;
import trammel.planning.job.Job;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.BadInputException;

/**
 * Tries changes of one job: cheap checks first, those that need the whole plan last, and no further
 * than it takes to see that a layout is worse than another. Counts what it tries. Not for use by
 * several threads at once.
 */
final class TrialBench {
  /** Checks that need the plan of the whole job cost the most, clearances come next. */
  static final List<String> ON_THE_PLAN =
      List.of(
          "bracket-welds",
          "bracket-welds-hard",
          "mount-strength",
          "mount-strength-hard",
          "mount-welds",
          "mount-welds-hard",
          "rail-twist",
          "rail-twist-hard",
          "mount-strength-loaded",
          "mount-welds-loaded",
          "rail-twist-loaded",
          "can-be-made",
          "parts-apart");

  private static final String CLEARANCE = "clearance";

  private final JobDocument document;
  private final Drafting drafting;
  private final Function<Draft, Estimate> quoting;
  private final Map<String, Trial> known = new HashMap<>();
  private int tried;

  TrialBench(JobDocument document, Drafting drafting, Function<Draft, Estimate> quoting) {
    this.document = document;
    this.drafting = drafting;
    this.quoting = quoting;
  }

  JobDocument document() {
    return document;
  }

  /** The job as it is, its layout already drawn; counts as tried. */
  Trial asItIs(Draft draft) {
    tried++;
    Trial trial = judged(Edits.NONE, draft, Double.POSITIVE_INFINITY);
    known.put(Edits.NONE.key(), trial);
    return trial;
  }

  /** Layouts tried so far; a price counts as one more. */
  int tried() {
    return tried;
  }

  /** Tries changes to the end. */
  Trial of(Edits edits) {
    return of(edits, Double.POSITIVE_INFINITY);
  }

  /** Tries changes until they are seen to be no better than a penalty. */
  Trial of(Edits edits, double bound) {
    String key = edits.key();
    Trial before = known.get(key);
    if (before != null && !(before.givenUp() && before.penalty() < bound)) {
      return before;
    }
    tried++;
    Trial trial = made(edits, bound);
    known.put(key, trial);
    return trial;
  }

  private Trial made(Edits edits, double bound) {
    try {
      Job job = JobReader.read(edits.in(document));
      UnitSystem shown = job.header().units();
      return judged(edits, drafting.draft(job, shown), bound);
    } catch (UnworkableLayoutException refused) {
      return Trial.refused(edits, refused.reason());
    } catch (BadInputException refused) {
      return Trial.refused(edits, Phrase.text(refused.getMessage()));
    } catch (IllegalArgumentException impossible) {
      // The engine refuses bars that hold no axle and the like; no such layout can be built.
      return Trial.refused(edits, Phrase.text(String.valueOf(impossible.getMessage())));
    }
  }

  private Trial judged(Edits edits, Draft draft, double bound) {
    LayoutAnalysis analysis = new LayoutAnalysis(draft.layout(), draft.judge().settings());
    List<Check> checks = new ArrayList<>(draft.judge().checks());
    checks.removeIf(Check::isOfMeasurements);
    checks.sort(Comparator.comparingInt(TrialBench::cost));
    List<Judge.Finding> open = new ArrayList<>();
    double penalty = 0;
    double margin = Double.POSITIVE_INFINITY;
    for (Check check : checks) {
      if (penalty > bound) {
        open.sort(Trial.WORST_FIRST);
        return new Trial(
            edits, Optional.of(draft), Phrase.NONE, open, penalty, margin, true, Optional.empty());
      }
      Optional<Judge.Finding> found = draft.judge().find(check, analysis);
      if (found.isPresent()) {
        penalty += Trial.weight(found.get());
        margin = Math.min(margin, Trial.share(found.get()));
        if (found.get().verdict() != Verdict.GOOD) {
          open.add(found.get());
        }
      }
    }
    open.sort(Trial.WORST_FIRST);
    return new Trial(
        edits, Optional.of(draft), Phrase.NONE, open, penalty, margin, false, Optional.empty());
  }

  private static int cost(Check check) {
    if (ON_THE_PLAN.contains(check.id())) {
      return 2;
    }
    return check.id().startsWith(CLEARANCE) ? 1 : 0;
  }

  /** The trial with its price; unchanged where it cannot be priced. */
  Trial priced(Trial trial) {
    if (trial.estimate().isPresent() || trial.draft().isEmpty()) {
      return trial;
    }
    tried++;
    try {
      Trial priced = trial.with(quoting.apply(trial.draft().get()));
      known.put(trial.edits().key(), priced);
      return priced;
    } catch (UnworkableLayoutException cannotBeMade) {
      return trial;
    }
  }
}

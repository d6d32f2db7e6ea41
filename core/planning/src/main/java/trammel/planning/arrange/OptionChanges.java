package trammel.planning.arrange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import trammel.engine.checks.Check;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.Judge;
import trammel.engine.checks.Verdict;
import trammel.planning.catalog.Catalog;
import trammel.planning.draft.Draft;
import trammel.planning.draft.Drafting;
import trammel.planning.draft.Extensions;

/**
 * For checks that no move of a point makes good: changes of the job's options that were tried and
 * do, without making another check worse.
 */
public final class OptionChanges {
  /** Changes that are usually tried for all checks together. */
  public static final int USUAL_BUDGET = 40;

  private static final int MEND_ROUNDS = 3;

  private final Drafting drafting;
  private final Extensions extensions;
  private final Catalog catalog;
  private final int budget;

  /**
   * What was found.
   *
   * @param byCheck the fields to change together for a check, at most three, by the check's id
   * @param tried how many changes were tried
   */
  public record Found(Map<String, List<LayoutChange>> byCheck, int tried) {
    /** Nothing was looked for. */
    public static final Found NONE = new Found(Map.of(), 0);

    public Found {
      byCheck = Map.copyOf(byCheck);
    }
  }

  /**
   * @param extensions the installed linkages, springs and additions
   * @param catalog what can be bought and done, and the limits
   * @param budget how many changes may be tried for all checks together
   */
  public OptionChanges(Extensions extensions, Catalog catalog, int budget) {
    this.drafting = new Drafting(extensions, catalog);
    this.extensions = extensions;
    this.catalog = catalog;
    this.budget = budget;
  }

  /**
   * Changes for checks that are not good and that no move of a point mends without upsetting
   * another. What the measurements say of themselves is left out: measuring again is what helps.
   *
   * @param draft the job as it is
   * @param results what its checks say, the worst first, with the moves that were tried
   */
  public Found of(Draft draft, List<CheckResult> results) {
    Set<String> ofMeasurements =
        draft.judge().checks().stream()
            .filter(Check::isOfMeasurements)
            .map(Check::id)
            .collect(Collectors.toSet());
    return ofChecks(
        draft,
        results.stream()
            .filter(CheckResult.Judged.class::isInstance)
            .map(CheckResult.Judged.class::cast)
            .filter(OptionChanges::isUnmended)
            .map(CheckResult.Judged::id)
            .filter(id -> !ofMeasurements.contains(id))
            .toList());
  }

  private static boolean isUnmended(CheckResult.Judged judged) {
    return judged.verdict() != Verdict.GOOD
        && judged.change().map(change -> !change.upsets().isEmpty()).orElse(true);
  }

  /**
   * Changes for the checks that are named.
   *
   * @param draft the job as it is
   * @param checks ids of the checks to mend, the worst first
   */
  public Found ofChecks(Draft draft, List<String> checks) {
    if (checks.isEmpty()) {
      return Found.NONE;
    }
    Wishes wishes = Wishes.usual();
    TrialBench bench =
        new TrialBench(
            draft.job().source(),
            drafting,
            unasked -> {
              throw new IllegalStateException("no price is asked for");
            });
    ShopStep step = new ShopStep(draft.job().header().units());
    Trial now = bench.asItIs(draft);
    Map<String, List<LayoutChange>> byCheck = new LinkedHashMap<>();
    for (int i = 0; i < checks.size(); i++) {
      String check = checks.get(i);
      // What one check leaves of its share is the next ones'.
      int limit = bench.tried() + (budget + 1 - bench.tried()) / (checks.size() - i);
      for (Edits edits : candidates(now, check, bench, wishes, step)) {
        if (bench.tried() >= limit) {
          break;
        }
        if (helps(bench.of(edits, now.penalty()), now, check)) {
          byCheck.put(check, changes(fewest(edits, now, check, bench), draft));
          break;
        }
      }
    }
    return new Found(byCheck, bench.tried() - 1);
  }

  /** Without those that are not needed: what is mended in one go may set what stands so already. */
  private static Edits fewest(Edits edits, Trial now, String check, TrialBench bench) {
    Edits fewest = edits;
    for (String path : edits.byPath().keySet()) {
      Edits fewer = fewest.without(path);
      if (!fewer.byPath().isEmpty() && helps(bench.of(fewer, now.penalty()), now, check)) {
        fewest = fewer;
      }
    }
    return fewest;
  }

  private static boolean helps(Trial trial, Trial now, String check) {
    if (trial.givenUp() || trial.draft().isEmpty()) {
      return false;
    }
    for (Judge.Finding open : trial.open()) {
      boolean worse =
          now.open().stream()
              .filter(was -> was.check().id().equals(open.check().id()))
              .allMatch(was -> rank(open.verdict()) > rank(was.verdict()));
      if (open.check().id().equals(check) || worse) {
        return false;
      }
    }
    return true;
  }

  private static int rank(Verdict verdict) {
    return verdict.ordinal();
  }

  /**
   * What mends it in one go, then each field that bears on it, a stride either way, then all others
   * as far as the budget goes.
   */
  private List<Edits> candidates(
      Trial now, String check, TrialBench bench, Wishes wishes, ShopStep step) {
    Set<String> seen = new LinkedHashSet<>();
    List<Edits> all = new ArrayList<>();
    add(all, seen, mended(now, check, bench, new Mending(bench, wishes, step, catalog)));
    Dials dials = new Dials(bench.document(), wishes, step);
    List<Dial> known = new ArrayList<>(dials.of(now.draft().orElseThrow()));
    known.addAll(Dials.mounting(now.draft().get().linkage().options(catalog)));
    for (String key : Bearing.on(check)) {
      known.stream()
          .filter(dial -> dial.key().equals(key))
          .forEach(dial -> values(dial, dials, now, step).forEach(edits -> add(all, seen, edits)));
    }
    new Additions(bench.document(), extensions, wishes)
        .dial(only(now, check))
        .ifPresent(dial -> values(dial, dials, now, step).forEach(edits -> add(all, seen, edits)));
    known.stream()
        .filter(dial -> dial.key().equals("mounting"))
        .forEach(dial -> values(dial, dials, now, step).forEach(edits -> add(all, seen, edits)));
    known.forEach(dial -> values(dial, dials, now, step).forEach(edits -> add(all, seen, edits)));
    return all;
  }

  /** What mends one check, again as long as it is not good: a second obstacle, a stronger pair. */
  private static Edits mended(Trial now, String check, TrialBench bench, Mending mending) {
    Trial trial = now;
    for (int round = 0; round < MEND_ROUNDS; round++) {
      Edits edits = mending.mended(only(trial, check));
      if (edits.key().equals(trial.edits().key())) {
        break;
      }
      trial = bench.of(edits, now.penalty());
    }
    return trial.edits();
  }

  /** A trial as if no other check were open. */
  private static Trial only(Trial trial, String check) {
    return new Trial(
        trial.edits(),
        trial.draft(),
        trial.refusal(),
        trial.open().stream().filter(open -> open.check().id().equals(check)).toList(),
        trial.penalty(),
        trial.margin(),
        trial.givenUp(),
        trial.estimate());
  }

  private static void add(List<Edits> all, Set<String> seen, Edits edits) {
    if (!edits.byPath().isEmpty() && seen.add(edits.key())) {
      all.add(edits);
    }
  }

  private static List<Edits> values(Dial dial, Dials dials, Trial now, ShopStep step) {
    List<Edits> edits = new ArrayList<>();
    if (dial.isChoice()) {
      String written = dials.text(dial, now).orElse("");
      dial.choices().stream()
          .filter(word -> !word.equals(written))
          .limit(3)
          .forEach(word -> edits.add(Edits.NONE.with(dial.path(), word, "")));
      return edits;
    }
    OptionalDouble value = dials.value(dial, now);
    if (value.isPresent()) {
      for (int level : new int[] {2, 0}) {
        for (int way : new int[] {1, -1}) {
          double to =
              step.stepped(
                  dial.kind(), value.getAsDouble() + way * step.stride(dial.kind(), level));
          if (to >= dial.least() && to <= dial.most()) {
            edits.add(Edits.NONE.with(dial.path(), step.text(dial.kind(), to), ""));
          }
        }
      }
    }
    return edits;
  }

  private static List<LayoutChange> changes(Edits edits, Draft draft) {
    List<LayoutChange> changes = new ArrayList<>();
    edits
        .byPath()
        .forEach(
            (path, edit) ->
                changes.add(
                    new LayoutChange(
                        path, Dials.given(draft.job().source(), path), edit.text(), "")));
    return changes;
  }
}

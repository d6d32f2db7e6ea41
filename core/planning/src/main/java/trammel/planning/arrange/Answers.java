package trammel.planning.arrange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import trammel.brackets.UnworkableLayoutException;
import trammel.engine.checks.Check;
import trammel.planning.draft.Draft;
import trammel.planning.estimate.Estimate;
import trammel.planning.job.JobDocument;
import trammel.planning.options.BarOptions;
import trammel.reading.fields.FieldValues;

/** Makes an answer of a trial: its changes as they are written, its price, its checks. */
final class Answers {
  private final JobDocument document;
  private final Function<Draft, Estimate> quoting;
  private final long seed;

  Answers(JobDocument document, Function<Draft, Estimate> quoting, long seed) {
    this.document = document;
    this.quoting = quoting;
    this.seed = seed;
  }

  /** The answer; empty where the layout cannot be made, so that it has no price. */
  Optional<ArrangedLayout> of(Trial trial) {
    Draft draft = trial.draft().orElseThrow();
    try {
      Estimate estimate =
          trial.estimate().isPresent() ? trial.estimate().get() : quoting.apply(draft);
      List<LayoutChange> changes = changes(trial.edits());
      JobDocument changed = document;
      for (LayoutChange change : changes) {
        changed = changed.withValue(change.path(), change.after());
      }
      return Optional.of(
          new ArrangedLayout(
              kind(draft),
              changes,
              changed,
              estimate,
              draft.judge().verdicts(draft.layout()),
              draft.judge().checks().stream()
                  .filter(Check::isOfMeasurements)
                  .map(Check::id)
                  .collect(Collectors.toSet()),
              StopChance.shareWithout(draft, seed)));
    } catch (UnworkableLayoutException cannotBeMade) {
      return Optional.empty();
    }
  }

  private static String kind(Draft draft) {
    StringBuilder kind = new StringBuilder(draft.linkage().title());
    FieldValues options = draft.linkageSite().options();
    boolean hasMounting =
        draft.linkage().options(draft.linkageSite().catalog()).stream()
            .anyMatch(option -> option.key().equals("mounting"));
    if (hasMounting) {
      kind.append(' ').append(options.get(BarOptions.mounting("bars")));
    }
    kind.append(", ").append(draft.spring().title());
    boolean notched = draft.layout().chassis().rails().notchDepthMm() > 0;
    return kind.append(notched ? ", notch" : ", no notch").toString();
  }

  /** Options of a group that starts anew are written as one change of the group. */
  private List<LayoutChange> changes(Edits edits) {
    Map<String, Edits.Edit> written = new LinkedHashMap<>();
    for (Map.Entry<String, Edits.Edit> one : edits.byPath().entrySet()) {
      String path = one.getKey();
      String group = path.substring(0, path.lastIndexOf('.'));
      Edits.Edit whole = written.get(group);
      if (whole == null) {
        written.put(path, one.getValue());
      } else {
        String option = path.substring(group.length() + 1) + ": " + one.getValue().text();
        String before = whole.text().substring(1, whole.text().length() - 1);
        String text = "{" + (before.isEmpty() ? "" : before + ", ") + option + "}";
        String reason =
            whole.reason().contains(one.getValue().reason())
                ? whole.reason()
                : whole.reason() + "; " + one.getValue().reason();
        written.put(group, new Edits.Edit(text, reason));
      }
    }
    List<LayoutChange> changes = new ArrayList<>();
    written.forEach(
        (path, edit) ->
            changes.add(
                new LayoutChange(path, Dials.given(document, path), edit.text(), edit.reason())));
    return changes;
  }
}

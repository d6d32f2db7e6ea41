package trammel.planning.arrange;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.planning.draft.Extensions;
import trammel.planning.extension.Addition;
import trammel.planning.job.JobDocument;

/**
 * What may be built onto a linkage and its springs for a check that is not good, as the installed
 * additions say of themselves.
 */
final class Additions {
  static final String PATH = "chosen.additions";

  private final JobDocument document;
  private final List<Addition> installed;

  /**
   * @param document the job file
   * @param wishes what is asked of the search; nothing is added where additions are kept
   */
  Additions(JobDocument document, Extensions extensions, Wishes wishes) {
    this.document = document;
    installed = wishes.keeps(PATH) ? List.of() : extensions.additions();
  }

  /** What the job asks for with one addition more; empty where none helps a check that is open. */
  Optional<Dial> dial(Trial trial) {
    String now = trial.edits().text(PATH).or(() -> Dials.given(document, PATH)).orElse("{}");
    List<String> choices = new ArrayList<>();
    for (Addition addition : installed) {
      Map<String, String> remedies = addition.remedies();
      trial.open().stream()
          .map(finding -> remedies.get(finding.check().id()))
          .filter(options -> options != null && !now.contains(addition.id() + ":"))
          .map(options -> with(now, addition.id() + ": " + options))
          .distinct()
          .forEach(choices::add);
    }
    return choices.isEmpty()
        ? Optional.empty()
        : Optional.of(new Dial(PATH, Dial.Kind.CHOICE, 0, 0, OptionalDouble.empty(), choices));
  }

  /** The check for which something is added. */
  String reason(Trial trial) {
    return trial.open().stream()
        .filter(
            finding ->
                installed.stream()
                    .anyMatch(one -> one.remedies().containsKey(finding.check().id())))
        .findFirst()
        .map(Mending::reason)
        .orElse("");
  }

  private static String with(String now, String entry) {
    String inside = now.substring(1, now.length() - 1);
    return "{" + (inside.isBlank() ? "" : inside + ", ") + entry + "}";
  }
}

package trammel.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.app.desk.FaultReport;
import trammel.app.desk.Setback;
import trammel.page.folder.Refused;
import trammel.page.http.Answer;
import trammel.page.http.Request;
import trammel.page.json.ProblemsJson;
import trammel.reading.tree.BadInputException;

/** Turns what a handler throws into an answer in the words for its user. */
final class Faults {
  private static final int UNPROCESSABLE = 422;

  private Faults() {}

  static Answer answer(Request request, Throwable thrown) {
    if (thrown instanceof Refused refused) {
      return Answer.refused(refused.status(), refused.getMessage());
    }
    if (thrown instanceof BadInputException bad) {
      Map<String, Object> json = new LinkedHashMap<>();
      json.put("refused", bad.getMessage());
      json.put("problems", ProblemsJson.of(bad.problems()));
      return Answer.json(UNPROCESSABLE, json);
    }
    Optional<Setback> setback = Setback.of(thrown, words(request));
    if (setback.isPresent()) {
      return Answer.refused(UNPROCESSABLE, setback.get().message());
    }
    return Answer.refused(
        500,
        "Trammel met a fault of its own ("
            + thrown.getClass().getSimpleName()
            + "): this was not done. "
            + new FaultReport(words(request), thrown).write());
  }

  private static List<String> words(Request request) {
    return List.of("page", String.valueOf(request.parts()));
  }
}

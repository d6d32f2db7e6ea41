package trammel.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import trammel.app.desk.Workbench;
import trammel.app.json.ArrangeJson;
import trammel.page.bench.Bench;
import trammel.page.bench.Study;
import trammel.page.folder.JobFolder;
import trammel.page.folder.JobText;
import trammel.page.folder.Refused;
import trammel.page.folder.TextFile;
import trammel.page.folder.Tray;
import trammel.page.http.Answer;
import trammel.page.http.Request;
import trammel.page.http.Routes;
import trammel.page.json.EditsJson;
import trammel.planning.arrange.ArrangedLayout;
import trammel.planning.arrange.Arrangement;
import trammel.planning.arrange.Arranging;
import trammel.planning.arrange.Goal;
import trammel.planning.arrange.LayoutChange;
import trammel.planning.arrange.OptionChanges;
import trammel.planning.arrange.Wishes;
import trammel.planning.arrange.WrittenLayout;
import trammel.planning.catalog.Catalog;
import trammel.planning.draft.Draft;
import trammel.planning.draft.Extensions;
import trammel.planning.estimate.Estimate;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.ListNode;
import trammel.reading.tree.NumberNode;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.TextNode;

/** Searches for layouts that pass every check, as {@code arrange} does. */
final class ArrangeRoutes {
  private final JobFolder folder;
  private final Bench bench;
  private final Searches searches;

  ArrangeRoutes(JobFolder folder, Bench bench, Searches searches) {
    this.folder = folder;
    this.bench = bench;
    this.searches = searches;
  }

  void addTo(Routes routes) {
    routes
        .on("GET", "/api/jobs/{file}/arrange", request -> Answer.json(now(request.part("file"))))
        .on("POST", "/api/jobs/{file}/arrange", this::begin)
        .on("POST", "/api/jobs/{file}/arrange/stop", this::stop)
        .on("GET", "/api/jobs/{file}/options", this::options);
  }

  /** Changes of options that mend single checks, and the edits that make them. */
  private Answer options(Request request) {
    JobText job = folder.read(request.part("file"));
    OptionChanges.Found found = bench.study(job).optionChanges();
    Map<String, Object> json = new LinkedHashMap<>(ArrangeJson.of(found));
    Map<String, Object> edits = new TreeMap<>();
    found.byCheck().forEach((check, changes) -> edits.put(check, edits(job, changes)));
    json.put("edits", edits);
    return Answer.json(json);
  }

  private Answer begin(Request request) {
    ObjectNode json = request.json();
    JobText job = folder.read(request.part("file"));
    Study study = bench.study(job);
    Wishes wishes =
        Wishes.usual().keeping(words(json, "keep")).aimingAt(goal(json)).trying(effort(json));
    Extensions extensions = bench.extensions();
    Catalog catalog = bench.catalog();
    var read = study.job();
    Function<Draft, Estimate> quoting =
        study.with((Workbench workbench) -> workbench.quoting(read));
    searches.begin(
        job,
        search ->
            new Arranging(extensions, catalog, quoting).arrange(study.document(), wishes, search));
    return Answer.json(now(job.name()));
  }

  private Answer stop(Request request) {
    searches.of(request.part("file")).ifPresent(Searches.Search::stop);
    return Answer.json(now(request.part("file")));
  }

  private Map<String, Object> now(String file) {
    JobText job = folder.read(file);
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("goals", Goal.words());
    Optional<Searches.Search> search = searches.of(file);
    json.put("running", search.isPresent() && search.get().isRunning());
    if (search.isEmpty()) {
      return json;
    }
    json.put("old", !search.get().job().equals(job));
    json.put("tried", search.get().now().tried());
    json.put("effort", search.get().now().effort());
    json.put("passing", search.get().now().passing());
    search.get().refused().ifPresent(words -> json.put("refused", words));
    search.get().found().ifPresent(found -> addFound(json, search.get().job(), found));
    return json;
  }

  private void addFound(Map<String, Object> json, JobText job, Arrangement found) {
    Study study = bench.study(job);
    String number = study.job().header().number();
    json.put("found", ArrangeJson.of(number, found, study.amounts().printer()));
    List<Object> edits = new ArrayList<>();
    for (ArrangedLayout layout : found.layouts()) {
      edits.add(edits(job, layout.changes()));
    }
    json.put("edits", edits);
    json.put("currency", currency(found));
  }

  /** The edits that make changes of a layout in the job. */
  private List<Object> edits(JobText job, List<LayoutChange> changes) {
    String text = WrittenLayout.text(job.name(), TextFile.withoutMark(job.text()), changes);
    return EditsJson.of(
        Tray.edits(bench.study(job).document().root(), JobText.of(job.name(), text)));
  }

  private static String currency(Arrangement found) {
    return found.layouts().isEmpty()
        ? "USD"
        : found.layouts().get(0).estimate().price().terms().currency().getCurrencyCode();
  }

  private static Goal goal(ObjectNode json) {
    if (!(json.find("for").orElse(null) instanceof TextNode word)) {
      return Goal.PRICE;
    }
    return Goal.ofWord(word.text())
        .orElseThrow(
            () ->
                new Refused(
                    400, "A search is for one of " + String.join(", ", Goal.words()) + "."));
  }

  private static int effort(ObjectNode json) {
    if (!(json.find("effort").orElse(null) instanceof NumberNode number)) {
      return Wishes.USUAL_EFFORT;
    }
    if (!number.text().matches("[0-9]{2,5}")) {
      throw new Refused(400, "An effort is a whole number of layouts from 20 to 99999.");
    }
    return Integer.parseInt(number.text());
  }

  private static List<String> words(ObjectNode json, String key) {
    List<String> words = new ArrayList<>();
    if (json.find(key).orElse(null) instanceof ListNode list) {
      for (DocumentNode node : list.entries()) {
        if (node instanceof TextNode text) {
          words.add(text.text());
        }
      }
    }
    return words;
  }
}

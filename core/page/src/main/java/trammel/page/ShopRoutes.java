package trammel.page;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.app.commandline.Version;
import trammel.app.drawings.MeasuringPicture;
import trammel.page.bench.Bench;
import trammel.page.folder.JobFolder;
import trammel.page.folder.JobText;
import trammel.page.folder.Plain;
import trammel.page.folder.Refused;
import trammel.page.http.Answer;
import trammel.page.http.Keys;
import trammel.page.http.Request;
import trammel.page.http.Routes;
import trammel.page.json.FieldsJson;
import trammel.planning.job.JobFields;
import trammel.planning.start.Answers;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.Location;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.TextNode;
import trammel.reading.tree.TreeEdit;

/** What is asked about the whole folder: its jobs, what is installed, who may come in. */
final class ShopRoutes {
  private static final String FORMAT = "format";

  private final JobFolder folder;
  private final Bench bench;
  private final Keys keys;
  private final News news;
  private final boolean lan;

  ShopRoutes(JobFolder folder, Bench bench, Keys keys, News news, boolean lan) {
    this.folder = folder;
    this.bench = bench;
    this.keys = keys;
    this.news = news;
    this.lan = lan;
  }

  void addTo(Routes routes) {
    routes
        .on("GET", "/api/shop", this::shop)
        .on("GET", "/api/fields", this::fields)
        .on("GET", "/api/pictures/{path}", this::picture)
        .on("POST", "/api/jobs", this::create)
        .on("POST", "/api/enter", this::enter)
        .on(
            "GET",
            "/api/events",
            request -> Answer.stream("application/x-ndjson; charset=utf-8", news::tell));
  }

  private Answer shop(Request request) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("version", Version.text());
    json.put(
        "folder",
        folder.path().getFileName() == null ? "/" : folder.path().getFileName().toString());
    json.put("lan", lan);
    if (lan) {
      json.put("code", keys.code());
    }
    List<Object> jobs = new ArrayList<>();
    for (String name : folder.names()) {
      row(name).ifPresent(jobs::add);
    }
    json.put("jobs", jobs);
    return Answer.json(json);
  }

  /** A line of the list; empty for a file that is another program's. */
  private Optional<Object> row(String name) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("file", name);
    try {
      JobText job = folder.read(name);
      ObjectNode root = Bench.root(job);
      if (!JobFields.FORMAT.equals(text(root, FORMAT))) {
        return Optional.empty();
      }
      for (String key : List.of("number", "vehicle", "customer", "date")) {
        row.put(key, text(root, "job." + key));
      }
      try {
        bench.study(job).job();
        row.put("state", "ready");
      } catch (BadInputException open) {
        row.put("state", "open");
        row.put("problems", open.problems().size());
      }
    } catch (BadInputException broken) {
      row.put("state", "broken");
      row.put("why", broken.problems().get(0).text());
    } catch (Refused broken) {
      row.put("state", "broken");
      row.put("why", broken.getMessage());
    }
    return Optional.of(row);
  }

  private static String text(ObjectNode root, String path) {
    Optional<DocumentNode> node = new TreeEdit(new Location("job", 0, 0, path)).find(root);
    return node.isPresent() && node.get() instanceof TextNode text ? text.text() : "";
  }

  private Answer fields(Request request) {
    UnitSystem units =
        request.asked("units").equals(Optional.of("metric")) ? UnitSystem.METRIC : UnitSystem.US;
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("fields", FieldsJson.of(JobFields.all(), units));
    json.put("pictures", MeasuringPicture.paths());
    json.putAll(FieldsJson.layouts(bench.extensions(), bench.catalog(), bench.troubles(), units));
    return Answer.json(json);
  }

  /** Where a measurement is taken. */
  private Answer picture(Request request) {
    MeasuringPicture picture =
        MeasuringPicture.alone(request.part("path"))
            .orElseThrow(() -> new Refused(404, "No picture shows that."));
    return Answer.bytes(200, "image/svg+xml", picture.svg().getBytes(StandardCharsets.UTF_8));
  }

  /** A new job: from nothing, or a copy of another. */
  private Answer create(Request request) {
    ObjectNode asked = request.json();
    String name = Plain.text(asked, "file").strip();
    String from = Plain.text(asked, "from").strip();
    String text = from.isEmpty() ? new Answers().yaml() : folder.read(from).text();
    JobText job = folder.create(name, text);
    news.changed();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("file", job.name());
    json.put("revision", job.revision());
    return Answer.json(json);
  }

  private Answer enter(Request request) {
    Optional<String> key =
        lan ? keys.enter(Plain.text(request.json(), "code").strip()) : Optional.empty();
    return key.isPresent()
        ? Answer.json(Map.of("key", key.get()))
        : Answer.refused(403, "That is not the code on the first screen now. Look again.");
  }
}

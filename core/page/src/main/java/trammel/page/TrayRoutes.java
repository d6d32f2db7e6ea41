package trammel.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.desk.Refusal;
import trammel.app.json.CompareJson;
import trammel.page.bench.Bench;
import trammel.page.bench.Study;
import trammel.page.folder.JobFolder;
import trammel.page.folder.JobText;
import trammel.page.folder.Plain;
import trammel.page.folder.Tray;
import trammel.page.http.Answer;
import trammel.page.http.Request;
import trammel.page.http.Routes;
import trammel.page.json.EditsJson;
import trammel.planning.compare.Variant;

/** Variants of a job side by side with the job as it stands, as {@code compare --json} has them. */
final class TrayRoutes {
  private final JobFolder folder;
  private final Bench bench;

  TrayRoutes(JobFolder folder, Bench bench) {
    this.folder = folder;
    this.bench = bench;
  }

  void addTo(Routes routes) {
    routes
        .on("GET", "/api/jobs/{file}/tray", request -> Answer.json(tray(request)))
        .on("POST", "/api/jobs/{file}/tray/keep", this::keep)
        .on("POST", "/api/jobs/{file}/tray/drop", this::drop);
  }

  private Tray of(Request request) {
    return new Tray(folder.file(request.part("file")));
  }

  private Map<String, Object> tray(Request request) {
    JobText job = folder.read(request.part("file"));
    Tray tray = of(request);
    List<Variant> variants = new ArrayList<>();
    Study own = bench.study(job);
    variants.add(new Variant("as it stands", own.estimate(), own.judged()));
    List<Object> edits = new ArrayList<>();
    List<Object> leftOut = new ArrayList<>();
    for (String name : tray.names()) {
      JobText variant = tray.of(name);
      try {
        Study study = bench.study(variant);
        variants.add(new Variant(name, study.estimate(), study.judged()));
        edits.add(EditsJson.of(Tray.edits(own.document().root(), variant)));
      } catch (RuntimeException refused) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("variant", name);
        row.put("why", Refusal.message(refused).orElseThrow(() -> refused));
        leftOut.add(row);
      }
    }
    Map<String, Object> json = CompareJson.of(variants, own.amounts());
    json.put("edits", edits);
    json.put("left_out", leftOut);
    return json;
  }

  private Answer keep(Request request) {
    of(request).keep(Plain.text(request.json(), "name"), folder.read(request.part("file")));
    return Answer.json(tray(request));
  }

  private Answer drop(Request request) {
    of(request).drop(Plain.text(request.json(), "name"));
    return Answer.json(tray(request));
  }
}

package trammel.page;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.app.closing.ActualsFile;
import trammel.app.commands.CloseCommand;
import trammel.app.fitup.FitUpForm;
import trammel.app.fitup.KeptTacking;
import trammel.app.fitup.ReadingsFile;
import trammel.app.json.FitUpJson;
import trammel.app.text.TackedText;
import trammel.page.bench.Bench;
import trammel.page.bench.Study;
import trammel.page.folder.FormFile;
import trammel.page.folder.JobFolder;
import trammel.page.folder.Plain;
import trammel.page.folder.Refused;
import trammel.page.http.Answer;
import trammel.page.http.Request;
import trammel.page.http.Routes;
import trammel.page.json.ChecksJson;
import trammel.planning.draft.Draft;
import trammel.planning.estimate.Estimate;
import trammel.planning.fitup.FitUpSheet;
import trammel.planning.fitup.TackJudge;
import trammel.planning.fitup.TackReading;
import trammel.planning.fitup.TackReport;
import trammel.planning.fitup.Target;
import trammel.planning.order.OrderedJob;
import trammel.planning.order.Ordering;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.tree.ListNode;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.TextNode;

/**
 * On the floor: where brackets go, what was read after tacking and what that says; and what the job
 * really took. Readings and hours stand in the same forms beside the job file that {@code fitup},
 * {@code tacked} and {@code close} write and read.
 */
final class FloorRoutes {
  private static final String FIT_UP = ".fitup.csv";
  private static final String SIGNED = ".signed.csv";
  private static final String ACTUALS = ".actuals.csv";
  private static final int ACTUALS_KEYS = 3;

  private final JobFolder folder;
  private final Bench bench;

  FloorRoutes(JobFolder folder, Bench bench) {
    this.folder = folder;
    this.bench = bench;
  }

  void addTo(Routes routes) {
    routes
        .on("GET", "/api/jobs/{file}/fitup", request -> Answer.json(fitUp(request)))
        .on("POST", "/api/jobs/{file}/fitup", this::read)
        .on("POST", "/api/jobs/{file}/fitup/anew", this::anew)
        .on("POST", "/api/jobs/{file}/fitup/sign", this::sign)
        .on("GET", "/api/jobs/{file}/close", request -> Answer.json(actuals(request)))
        .on("POST", "/api/jobs/{file}/close/used", this::used)
        .on("POST", "/api/jobs/{file}/close/anew", this::closeAnew)
        .on("POST", "/api/jobs/{file}/close", this::close);
  }

  private Study study(Request request) {
    return bench.study(folder.read(request.part("file")));
  }

  // Fit-up

  private FormFile form(Request request, Study study, FitUpSheet sheet) {
    String number = study.job().header().number();
    return new FormFile(
        FormFile.beside(folder.file(request.part("file")), FIT_UP),
        FitUpForm.csv(number, sheet, study.amounts().printer()),
        1,
        column -> column.startsWith(FitUpForm.READING));
  }

  private Map<String, Object> fitUp(Request request) {
    return fitUp(request, false);
  }

  /**
   * The sheet with the readings so far and what they say.
   *
   * @param kept true to write what is new of them into the shop's ledger
   */
  private Map<String, Object> fitUp(Request request, boolean kept) {
    Study study = study(request);
    TackJudge judge = new TackJudge(study.draft());
    FitUpSheet sheet = judge.sheet();
    FormFile form = form(request, study, sheet);
    QuantityPrinter printer = study.amounts().printer();
    Map<String, Object> json = FitUpJson.of(study.draft(), sheet, study.stops());
    List<Object> targets = new ArrayList<>();
    List<?> plain = (List<?>) json.get("targets");
    for (int i = 0; i < sheet.targets().size(); i++) {
      Target target = sheet.targets().get(i);
      Map<String, Object> row = new LinkedHashMap<>();
      ((Map<?, ?>) plain.get(i)).forEach((key, value) -> row.put((String) key, value));
      row.put("set_to_text", FitUpForm.value(target, target.plan(), printer));
      row.put("within_text", FitUpForm.value(target, target.tolerance(), printer));
      row.put("readings", form.filled(List.of(target.id())));
      targets.add(row);
    }
    json.put("targets", targets);
    json.put("struts", struts(sheet, printer));
    json.put("form", form.file().getFileName().toString());
    json.put("old_form", form.isOld());
    Optional<Tacked> tacked =
        form.isThere() && !form.isOld() ? tacked(study, judge, form) : Optional.empty();
    Optional<TackReport> report = tacked.map(Tacked::report);
    report.ifPresent(said -> addTacked(json, study, said));
    json.put("signed", signed(request, form, sheet, report));
    if (kept) {
      tacked
          .flatMap(one -> keep(study, sheet, one))
          .ifPresent(trouble -> json.put("not_kept", trouble));
    }
    return json;
  }

  /** What was read after tacking, and what that says. */
  private record Tacked(List<TackReading> readings, TackReport report) {}

  private Optional<String> keep(Study study, FitUpSheet sheet, Tacked tacked) {
    return bench.with(
        workbench ->
            KeptTacking.keep(
                workbench.shopIn(folder.path(), study.units()),
                KeptTacking.of(
                    study.job().header().number(),
                    sheet,
                    tacked.readings,
                    tacked.report,
                    new TackedText(study.amounts())::words)));
  }

  private List<Object> signed(
      Request request, FormFile form, FitUpSheet sheet, Optional<TackReport> report) {
    Map<String, SignOffs.SignOff> signOffs = signOffs(request).byBracket();
    List<Object> rows = new ArrayList<>();
    for (SignOffs.Bracket bracket : SignOffs.brackets(sheet, form)) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("bracket", bracket.name());
      bracket.notYet(report).ifPresent(why -> row.put("not_yet", why));
      SignOffs.SignOff signed = signOffs.get(bracket.name());
      if (signed != null) {
        row.put("by", signed.by());
        row.put("on", signed.on());
        row.put("holds", signed.readings().equals(bracket.readings()));
      }
      rows.add(row);
    }
    return rows;
  }

  private SignOffs signOffs(Request request) {
    return new SignOffs(FormFile.beside(folder.file(request.part("file")), SIGNED));
  }

  /** Signs a bracket off, or takes that back where nobody is named. */
  private Answer sign(Request request) {
    Study study = study(request);
    ObjectNode json = request.json();
    TackJudge judge = new TackJudge(study.draft());
    FormFile form = form(request, study, judge.sheet());
    synchronized (folder.lock(request.part("file"))) {
      SignOffs.Bracket bracket =
          SignOffs.brackets(judge.sheet(), form).stream()
              .filter(one -> one.name().equals(Plain.text(json, "bracket")))
              .findFirst()
              .orElseThrow(() -> new Refused(404, "The sheet has no such bracket."));
      String by = Plain.text(json, "by").strip();
      if (form.isOld()) {
        throw new Refused(
            422, "The plan has changed since these readings: begin a new form first.");
      }
      if (!by.isEmpty()) {
        bracket
            .notYet(tacked(study, judge, form).map(Tacked::report))
            .ifPresent(
                why -> {
                  throw new Refused(422, bracket.name() + " cannot be signed off yet: " + why);
                });
      }
      signOffs(request).sign(bracket, by);
    }
    return Answer.json(fitUp(request));
  }

  private static List<Object> struts(FitUpSheet sheet, QuantityPrinter printer) {
    List<Object> struts = new ArrayList<>();
    for (FitUpSheet.Strut strut : sheet.struts()) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("in_place_of", strut.name());
      row.put("length_mm", strut.lengthMm());
      row.put("length_text", printer.length(strut.lengthMm()));
      struts.add(row);
    }
    return struts;
  }

  /** What the readings so far say; empty while there are none. */
  private static Optional<Tacked> tacked(Study study, TackJudge judge, FormFile form) {
    boolean any =
        judge.sheet().targets().stream().anyMatch(one -> !form.filled(List.of(one.id())).isEmpty());
    if (!any) {
      return Optional.empty();
    }
    ReadingsFile file =
        new ReadingsFile(form.file(), judge.sheet(), study.units(), study.job().header().number());
    List<TackReading> readings = file.read();
    return Optional.of(new Tacked(readings, judge.judge(readings)));
  }

  private static void addTacked(Map<String, Object> json, Study study, TackReport report) {
    Map<String, Object> tacked = FitUpJson.of(study.draft(), report);
    TackedText words = new TackedText(study.amounts());
    tacked.put("re_set_text", report.moves().stream().map(words::words).toList());
    tacked.put("checks", ChecksJson.of(study.draft(), report.asTacked(), study.amounts()));
    json.put("tacked", tacked);
  }

  /**
   * A reading is looked at before it is kept, in the form and in the ledger: one that cannot be is
   * refused.
   */
  private Answer read(Request request) {
    Study study = study(request);
    FormFile form = form(request, study, FitUpSheet.of(study.draft()));
    ObjectNode json = request.json();
    List<String> key = List.of(Plain.text(json, "target"));
    List<String> before = form.filled(key);
    synchronized (folder.lock(request.part("file"))) {
      form.fill(key, words(json, "from"), words(json, "readings"));
      try {
        return Answer.json(fitUp(request, true));
      } catch (RuntimeException refused) {
        form.fill(key, words(json, "readings"), before);
        throw refused;
      }
    }
  }

  private Answer anew(Request request) {
    Study study = study(request);
    form(request, study, FitUpSheet.of(study.draft())).beginAnew();
    return Answer.json(fitUp(request));
  }

  // Closing

  private FormFile actualsForm(Request request, Study study) {
    Estimate quoted = study.estimate();
    Draft draft = study.draft();
    Estimate standard = study.with(workbench -> workbench.standardEstimate(draft));
    QuantityPrinter printer = study.amounts().printer();
    String form =
        new ActualsFile(
                study.job().header().number(),
                standard.hours().lines(),
                quoted.hours().lines(),
                new Ordering(bench.catalog(), printer)
                    .order(List.of(OrderedJob.of(quoted)))
                    .lines())
            .form();
    Path file = FormFile.beside(folder.file(request.part("file")), ACTUALS);
    return new FormFile(file, form, ACTUALS_KEYS, "used"::equals);
  }

  private Map<String, Object> actuals(Request request) {
    Study study = study(request);
    FormFile form = actualsForm(request, study);
    List<Object> rows = new ArrayList<>();
    for (List<String> row : form.lines()) {
      if (row.get(0).equals("hours") || row.get(0).equals("material")) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("kind", row.get(0));
        json.put("item", row.get(1));
        json.put("what", row.get(2));
        json.put("planned", row.get(3));
        json.put("unit", row.get(4));
        json.put("used", form.filled(row.subList(0, ACTUALS_KEYS)));
        rows.add(json);
      }
    }
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("job", study.job().header().number());
    json.put("form", form.file().getFileName().toString());
    json.put("old_form", form.isOld());
    json.put("rows", rows);
    return json;
  }

  private Answer used(Request request) {
    Study study = study(request);
    ObjectNode json = request.json();
    synchronized (folder.lock(request.part("file"))) {
      actualsForm(request, study)
          .fill(
              List.of(Plain.text(json, "kind"), Plain.text(json, "item"), Plain.text(json, "what")),
              words(json, "from"),
              words(json, "used"));
    }
    return Answer.json(actuals(request));
  }

  private Answer closeAnew(Request request) {
    actualsForm(request, study(request)).beginAnew();
    return Answer.json(actuals(request));
  }

  /** What {@code close JOB ACTUALS --json} says. */
  private Answer close(Request request) throws Exception {
    Study study = study(request);
    Path form = actualsForm(request, study).file();
    ObjectNode json = request.json();
    List<String> words = new ArrayList<>();
    words.add(folder.file(request.part("file")).toString());
    words.add(form.toString());
    if (Plain.flag(json, "again")) {
      words.add("--again");
    }
    if (Plain.flag(json, "as_written")) {
      words.add("--as-written");
    }
    CloseCommand command = new CloseCommand();
    command.prepare(bench.reading());
    Map<String, Object> answer = Errand.run(command, words, "closed");
    bench.readAnew();
    return Answer.json(answer);
  }

  // What a request says

  private static List<String> words(ObjectNode json, String key) {
    if (!(json.find(key).orElse(null) instanceof ListNode list)) {
      throw new Refused(400, "A request needs a list under '" + key + "'.");
    }
    return list.entries().stream()
        .map(node -> node instanceof TextNode text ? text.text().strip() : "")
        .filter(text -> !text.isEmpty())
        .toList();
  }
}

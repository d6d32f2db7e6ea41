package trammel.page;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import trammel.app.desk.Refusal;
import trammel.app.json.EstimateJson;
import trammel.app.json.StopsJson;
import trammel.app.json.WhyJson;
import trammel.app.text.Cautions;
import trammel.engine.layout.Layout;
import trammel.engine.motion.AxlePose;
import trammel.page.bench.Bench;
import trammel.page.bench.BodyMotions;
import trammel.page.bench.Fields;
import trammel.page.bench.Study;
import trammel.page.folder.Edit;
import trammel.page.folder.JobEdits;
import trammel.page.folder.JobFolder;
import trammel.page.folder.JobText;
import trammel.page.folder.Plain;
import trammel.page.folder.Refused;
import trammel.page.http.Answer;
import trammel.page.http.Request;
import trammel.page.http.Routes;
import trammel.page.json.ChecksJson;
import trammel.page.json.ProblemsJson;
import trammel.page.json.SceneJson;
import trammel.planning.estimate.PriceTrail;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.ListNode;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.Problem;
import trammel.reading.tree.TextNode;

/** What is asked about one job: reading it, changing it, judging, drawing and pricing it. */
final class JobRoutes {
  private static final String JOB = "/api/jobs/{file}";

  private final JobFolder folder;
  private final Bench bench;
  private final News news;
  private final JobEdits edits;

  JobRoutes(JobFolder folder, Bench bench, News news) {
    this.folder = folder;
    this.bench = bench;
    this.news = news;
    edits = new JobEdits(folder);
  }

  void addTo(Routes routes) {
    routes
        .on("GET", JOB, this::job)
        .on("POST", JOB + "/edit", this::edit)
        .on(
            "POST",
            JOB + "/undo",
            request -> changed(request, edits.undo(file(request), request.device())))
        .on(
            "POST",
            JOB + "/redo",
            request -> changed(request, edits.redo(file(request), request.device())))
        .on("POST", JOB + "/look", this::look)
        .on("GET", JOB + "/judge", this::judge)
        .on("POST", JOB + "/scene", this::scene)
        .on("GET", JOB + "/pose", this::pose)
        .on("GET", JOB + "/why", this::why);
  }

  private static String file(Request request) {
    return request.part("file");
  }

  private Study study(Request request) {
    return bench.study(folder.read(file(request)));
  }

  // Reading and changing

  private Answer job(Request request) {
    return Answer.json(json(folder.read(file(request)), request.device()));
  }

  private Map<String, Object> json(JobText job, String device) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("file", job.name());
    json.put("revision", job.revision());
    ObjectNode root = bench.study(job).document().root();
    json.put("units", Fields.units(root).word());
    json.put("document", Plain.of(root));
    List<Problem> problems = problems(bench.study(job));
    json.put("problems", ProblemsJson.of(problems));
    JobEdits.Steps steps = edits.steps(job.name(), device);
    steps.undo().ifPresent(label -> json.put("undo", label));
    steps.redo().ifPresent(label -> json.put("redo", label));
    return json;
  }

  private static List<Problem> problems(Study study) {
    try {
      return study.job().warnings();
    } catch (BadInputException bad) {
      return bad.problems();
    }
  }

  private Answer edit(Request request) {
    Fields fields = new Fields(bench.extensions(), bench.catalog());
    return changed(
        request, edits.make(file(request), request.device(), request.json(), fields::check));
  }

  private Answer changed(Request request, JobEdits.Outcome outcome) {
    news.changed();
    Map<String, Object> json = json(outcome.job(), request.device());
    if (outcome.conflicts().isEmpty()) {
      return Answer.json(json);
    }
    json.put("conflicts", outcome.conflicts());
    return Answer.json(409, json);
  }

  // Looking, without writing

  /** What changes would come to: problems, or points and verdicts. Nothing is written. */
  private Answer look(Request request) {
    long began = System.nanoTime();
    JobText job = folder.read(file(request));
    ObjectNode root = bench.study(job).document().root();
    List<Edit> asked = JobEdits.edits(request.json());
    Fields fields = new Fields(bench.extensions(), bench.catalog());
    List<Problem> refused = new ArrayList<>();
    for (Edit edit : asked) {
      root = edit.in(root);
    }
    for (Edit edit : asked) {
      try {
        fields.check(root, edit);
      } catch (BadInputException bad) {
        bad.problems().forEach(problem -> refused.add(at(edit.path(), problem)));
      }
    }
    Map<String, Object> json = looked(bench.study(job, root), refused);
    return Answer.json(json).with("Server-Timing", timing(began));
  }

  /** A value by itself knows only its own key. */
  private static Problem at(String path, Problem problem) {
    return new Problem(
        problem.file(),
        0,
        path,
        problem.given(),
        problem.allowed(),
        problem.remedy(),
        problem.severity());
  }

  private static Map<String, Object> looked(Study study, List<Problem> refused) {
    Map<String, Object> json = new LinkedHashMap<>();
    List<Problem> problems = new ArrayList<>(refused);
    try {
      problems.addAll(study.job().warnings());
      json.put("problems", ProblemsJson.of(problems));
      if (!refused.isEmpty()) {
        return json;
      }
      json.put("points", SceneJson.points(study.draft().layout()));
      json.put("checks", ChecksJson.of(study.draft(), study.verdicts(), study.amounts()));
      json.put(StopsJson.FIELD, StopsJson.of(study.stops()));
    } catch (BadInputException bad) {
      for (Problem problem : bad.problems()) {
        if (problems.stream().noneMatch(one -> one.field().equals(problem.field()))) {
          problems.add(problem);
        }
      }
      json.put("problems", ProblemsJson.of(problems));
    } catch (RuntimeException refusal) {
      json.put("refused", Refusal.message(refusal).orElseThrow(() -> refusal));
    }
    return json;
  }

  private static String timing(long began) {
    return "work;dur=" + (System.nanoTime() - began) / 100_000 / 10.0;
  }

  // Judging and pricing

  /** What {@code quote --json} says, the checks with their words; the price left out if refused. */
  private Answer judge(Request request) {
    long began = System.nanoTime();
    Study study = study(request);
    Map<String, Object> json = new LinkedHashMap<>();
    List<Object> checks = ChecksJson.of(study.draft(), study.judged(), study.amounts());
    try {
      json.putAll(EstimateJson.quote(study.estimate(), study.judged(), study.stops()));
      json.put("price_lines", new PriceTrail(study.estimate()).names());
    } catch (RuntimeException refusal) {
      json.put("job", study.job().header().number());
      json.put(StopsJson.FIELD, StopsJson.of(study.stops()));
      json.put("no_price", Refusal.message(refusal).orElseThrow(() -> refusal));
    }
    json.put("checks", checks);
    json.put("remarks", study.remarks());
    json.put("assumptions", study.job().assumptions());
    json.put("caution", Cautions.SCREENING);
    json.put("linkage", study.draft().linkage().title());
    json.put("spring", study.draft().spring().title());
    return Answer.json(json).with("Server-Timing", timing(began));
  }

  private Answer why(Request request) {
    Study study = study(request);
    String line = request.asked("line").orElse("total");
    return Answer.json(
        WhyJson.of(study.job().header().number(), new PriceTrail(study.estimate()).find(line)));
  }

  // Drawing

  /** The finished job, or what it would be after changes that are not made. */
  private Answer scene(Request request) {
    List<Edit> asked = JobEdits.edits(request.json());
    Study study = asked.isEmpty() ? study(request) : changed(request, asked);
    Set<String> known = new HashSet<>();
    if (request.json().find("known").orElse(null) instanceof ListNode list) {
      for (DocumentNode node : list.entries()) {
        if (node instanceof TextNode text) {
          known.add(text.text());
        }
      }
    }
    return Answer.json(
        SceneJson.of(study.assembly(), study.draft().layout(), known, study.draft().printer()));
  }

  private Study changed(Request request, List<Edit> asked) {
    JobText job = folder.read(file(request));
    ObjectNode root = bench.study(job).document().root();
    for (Edit edit : asked) {
      root = edit.in(root);
    }
    return bench.study(job, root);
  }

  private Answer pose(Request request) {
    Layout layout = study(request).draft().layout();
    double heaveMm = number(request, "heave_mm");
    double rollRad = Math.toRadians(number(request, "roll_deg"));
    Optional<AxlePose> pose = layout.motion().solve(heaveMm, rollRad).found();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("reached", pose.isPresent());
    pose.ifPresent(found -> json.put("bodies", new LinkedHashMap<>(BodyMotions.of(layout, found))));
    return Answer.json(json);
  }

  private static double number(Request request, String name) {
    try {
      double number = Double.parseDouble(request.asked(name).orElse("0"));
      if (Math.abs(number) <= 1000) {
        return number;
      }
    } catch (NumberFormatException none) {
      // Said below.
    }
    throw new Refused(400, name + " is a number from -1000 to 1000.");
  }
}

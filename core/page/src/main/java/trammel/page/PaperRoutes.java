package trammel.page;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.files.FileSet;
import trammel.app.files.OutFolder;
import trammel.app.handout.QuoteFiles;
import trammel.engine.checks.CheckResult;
import trammel.page.bench.Bench;
import trammel.page.bench.Study;
import trammel.page.folder.FormFile;
import trammel.page.folder.JobFolder;
import trammel.page.folder.JobText;
import trammel.page.folder.Refused;
import trammel.page.http.Answer;
import trammel.page.http.Request;
import trammel.page.http.Routes;
import trammel.planning.estimate.Estimate;

/**
 * What a job hands out, made as {@code quote --out} makes it. A browser opens papers in windows of
 * their own, which send no key along; so they lie under an address that cannot be guessed and is
 * good for a while.
 */
final class PaperRoutes {
  private static final Duration GOOD_FOR = Duration.ofMinutes(30);
  private static final int MOST_KEPT = 6;
  private static final int TICKET_BYTES = 18;

  /** A paper is a document and no program: it runs nothing and loads nothing. */
  private static final String PAPER_POLICY =
      "default-src 'none'; style-src 'unsafe-inline'; img-src data:; font-src data:;"
          + " frame-ancestors 'self'; base-uri 'none'; form-action 'none'";

  private static final Map<String, String> TYPES =
      Map.of(
          "pdf", "application/pdf",
          "html", "text/html; charset=utf-8",
          "svg", "image/svg+xml",
          "png", "image/png",
          "csv", "text/csv; charset=utf-8",
          "json", "application/json",
          "txt", "text/plain; charset=utf-8");

  private final JobFolder folder;
  private final Bench bench;
  private final SecureRandom random = new SecureRandom();
  private final Map<String, Papers> kept =
      new LinkedHashMap<>() {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Papers> eldest) {
          return size() > MOST_KEPT;
        }
      };

  /** The papers of one job as it stood. */
  private record Papers(JobText job, FileSet files, List<String> remarks, Instant made) {}

  PaperRoutes(JobFolder folder, Bench bench) {
    this.folder = folder;
    this.bench = bench;
  }

  void addTo(Routes routes) {
    routes
        .on("POST", "/api/jobs/{file}/handout", this::handOut)
        .on("POST", "/api/jobs/{file}/handout/write", this::write)
        .on("GET", "/paper/{ticket}/{name}", this::paper);
  }

  private Answer handOut(Request request) {
    JobText job = folder.read(request.part("file"));
    Papers papers = papers(job);
    String ticket = ticket();
    synchronized (kept) {
      kept.put(ticket, papers);
    }
    List<Object> files = new ArrayList<>();
    papers
        .files()
        .contents()
        .forEach(
            (name, content) -> {
              Map<String, Object> row = new LinkedHashMap<>();
              row.put("name", name);
              row.put("bytes", content.length);
              files.add(row);
            });
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("ticket", ticket);
    json.put("revision", job.revision());
    json.put("files", files);
    json.put("remarks", papers.remarks());
    return Answer.json(json);
  }

  private Papers papers(JobText job) {
    synchronized (kept) {
      for (Papers papers : kept.values()) {
        if (papers.job().equals(job)) {
          return papers;
        }
      }
    }
    Study study = bench.study(job);
    List<String> remarks = new ArrayList<>();
    Estimate estimate = study.estimate();
    List<CheckResult> results = study.judged();
    FileSet files =
        study.with(
            workbench -> new QuoteFiles(workbench, step -> {}, remarks::add).of(estimate, results));
    return new Papers(job, files, List.copyOf(remarks), Instant.now());
  }

  private String ticket() {
    byte[] bytes = new byte[TICKET_BYTES];
    random.nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  private Answer paper(Request request) {
    Papers papers;
    synchronized (kept) {
      papers = kept.get(request.part("ticket"));
    }
    String name = request.part("name");
    byte[] content = papers == null ? null : papers.files().contents().get(name);
    if (content == null || Instant.now().isAfter(papers.made().plus(GOOD_FOR))) {
      throw new Refused(404, "This paper was made a while ago: make the papers again.");
    }
    String ending = name.substring(name.lastIndexOf('.') + 1);
    return Answer.bytes(200, TYPES.getOrDefault(ending, "application/octet-stream"), content)
        .with("Content-Security-Policy", PAPER_POLICY)
        .with(
            "Content-Disposition",
            (request.asked("save").isPresent() ? "attachment" : "inline")
                + "; filename=\""
                + name.substring(name.lastIndexOf('/') + 1)
                + "\"");
  }

  /** Into a folder beside the job file, by the rules of {@code --out}. */
  private Answer write(Request request) {
    JobText job = folder.read(request.part("file"));
    Papers papers = papers(job);
    Path out = FormFile.beside(folder.file(job.name()), "-quote");
    String number = bench.study(job).job().header().number();
    OutFolder.Written written =
        OutFolder.of(out.toString(), "quote", false).forJobs(List.of(number)).write(papers.files());
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("folder", out.getFileName().toString());
    json.put("files", written.files().size());
    json.put("remarks", written.remarks());
    return Answer.json(json);
  }
}

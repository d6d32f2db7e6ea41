package trammel.app.commands;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicInteger;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.WaitingLine;
import trammel.app.desk.Setback;
import trammel.app.desk.Workbench;
import trammel.app.plugins.InstalledExtensions;
import trammel.app.text.Amounts;
import trammel.app.text.Stops;
import trammel.brackets.work.WorkPlan;
import trammel.cutting.background.Background;
import trammel.engine.checks.CheckResult;
import trammel.planning.draft.Draft;
import trammel.planning.job.Job;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.planning.order.OrderedJob;

/**
 * The jobs that an order is over, each worked out as far as an order needs it: its layout, the
 * verdicts of its checks and what is bought for it. Jobs that ask for the same work are worked out
 * once, and two jobs at a time.
 */
final class JobsToOrder {
  private static final int MOST_WORKERS = 2;

  private final Workbench bench;
  private final Screen screen;
  private final List<String> files;
  private final List<OrderedJob> ordered = new ArrayList<>();
  private final List<CheckResult> checks = new ArrayList<>();
  private final List<String> stopping = new ArrayList<>();
  private final JobNumbers numbers = new JobNumbers();
  private final Map<String, FutureTask<Worked>> byWork = new ConcurrentHashMap<>();
  private Optional<Job> first = Optional.empty();
  private Optional<LocalDate> latest = Optional.empty();
  private ExitCode worst = ExitCode.DONE;
  private Stops stops = Stops.NONE;

  /** What a layout asks for, whatever its job is called. */
  private record Worked(WorkPlan toBuy, List<CheckResult> verdicts) {}

  /** A job as far as it came: read and worked out, or what was thrown on the way. */
  private record Outcome(
      Optional<Job> job, Optional<Worked> worked, Optional<RuntimeException> thrown) {}

  private JobsToOrder(Workbench bench, Screen screen, List<String> files) {
    this.bench = bench;
    this.screen = screen;
    this.files = files;
  }

  /**
   * Works the jobs out. One that cannot be used is reported and left out, unless it is the only
   * one.
   */
  static JobsToOrder of(List<String> files, Workbench bench, Screen screen) {
    JobsToOrder jobs = new JobsToOrder(bench, screen, files);
    jobs.workOut();
    return jobs;
  }

  List<OrderedJob> ordered() {
    return ordered;
  }

  /** The verdicts over all of them, job after job. */
  List<CheckResult> checks() {
    return checks;
  }

  /** The numbers of those of which a check says stop. */
  List<String> stopping() {
    return stopping;
  }

  /** What the checks of all of them say stop to. */
  Stops stops() {
    return stops;
  }

  List<String> numbers() {
    List<String> all = new ArrayList<>(ordered.size());
    for (OrderedJob job : ordered) {
      all.add(job.number());
    }
    return all;
  }

  /** The first of them, whose units the order is printed in. */
  Job first() {
    return first.get();
  }

  /** The date of the latest job. */
  LocalDate latest() {
    return latest.get();
  }

  /** True if one could not be used, so that the order is shown and not carried out. */
  boolean leftOut() {
    return worst != ExitCode.DONE;
  }

  /** What the run ends with for those that could not be used; done if there are none. */
  ExitCode worst() {
    return worst;
  }

  private void workOut() {
    bench.begin(Path.of(files.get(0)));
    InstalledExtensions installed = bench.extensions();
    Outcome[] outcomes = outcomes(installed);
    for (int i = 0; i < outcomes.length; i++) {
      take(files.get(i), outcomes[i]);
    }
    if (ordered.isEmpty()) {
      String none = "None of the jobs can be ordered for; the reasons are above.";
      throw worst == ExitCode.CHECK_SAYS_STOP
          ? CommandFailure.stopped(none)
          : CommandFailure.badInput(none);
    }
  }

  private Outcome[] outcomes(InstalledExtensions installed) {
    Outcome[] outcomes = new Outcome[files.size()];
    AtomicInteger next = new AtomicInteger();
    AtomicInteger done = new AtomicInteger();
    WaitingLine line =
        WaitingLine.on(
            screen, () -> "Working out the jobs, " + done.get() + " of " + files.size() + " done");
    try {
      List<Background<Void>> others = new ArrayList<>();
      int workers = Math.min(MOST_WORKERS, Runtime.getRuntime().availableProcessors());
      for (int w = 1; w < Math.min(workers, files.size()); w++) {
        others.add(
            Background.start(
                () -> {
                  deal(outcomes, next, done, installed);
                  return null;
                }));
      }
      deal(outcomes, next, done, installed);
      others.forEach(Background::get);
    } finally {
      line.close();
    }
    return outcomes;
  }

  private void deal(
      Outcome[] outcomes, AtomicInteger next, AtomicInteger done, InstalledExtensions installed) {
    int i = next.getAndIncrement();
    while (i < outcomes.length) {
      outcomes[i] = outcome(files.get(i), installed);
      done.incrementAndGet();
      i = next.getAndIncrement();
    }
  }

  private Outcome outcome(String file, InstalledExtensions installed) {
    Optional<Job> job = Optional.empty();
    try {
      JobDocument document = bench.load(Path.of(file));
      job = Optional.of(JobReader.read(document));
      return new Outcome(job, Optional.of(worked(job.get(), installed)), Optional.empty());
    } catch (RuntimeException thrown) {
      return new Outcome(job, Optional.empty(), Optional.of(thrown));
    }
  }

  private Worked worked(Job job, InstalledExtensions installed) {
    String work = job.header().units() + " " + job.source().work();
    FutureTask<Worked> mine = new FutureTask<>(() -> fresh(job, installed));
    FutureTask<Worked> known = byWork.putIfAbsent(work, mine);
    if (known == null) {
      mine.run();
    }
    try {
      return (known == null ? mine : known).get();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("stopped while a job was worked out", stopped);
    } catch (ExecutionException refused) {
      // Once more for the words: what is refused names the file and the number of the job.
      return fresh(job, installed);
    }
  }

  private Worked fresh(Job job, InstalledExtensions installed) {
    Draft draft = bench.draft(job, installed);
    return new Worked(bench.toBuy(draft), draft.judge().verdicts(draft.layout()));
  }

  /** In the order of the files, so that what is told does not depend on who was done first. */
  private void take(String file, Outcome outcome) {
    outcome.job().ifPresent(bench::tellWarnings);
    outcome.job().ifPresent(bench::tellOldPrices);
    try {
      if (outcome.thrown().isPresent()) {
        throw outcome.thrown().get();
      }
      add(outcome.job().get(), outcome.worked().get());
    } catch (RuntimeException thrown) {
      if (files.size() == 1) {
        throw thrown;
      }
      Setback setback = Setback.of(thrown, List.of(file)).orElseThrow(() -> thrown);
      JobRun.tell(setback, file, screen);
      worst = setback.exitCode().code() > worst.code() ? setback.exitCode() : worst;
    }
  }

  private void add(Job job, Worked worked) {
    numbers.add(job.header().number());
    if (first.isEmpty()) {
      first = Optional.of(job);
    }
    LocalDate date = job.header().date();
    latest = Optional.of(latest.isEmpty() || date.isAfter(latest.get()) ? date : latest.get());
    ordered.add(OrderedJob.of(job, worked.toBuy()));
    checks.addAll(worked.verdicts());
    if (Verdicts.exitCode(worked.verdicts()) == ExitCode.CHECK_SAYS_STOP) {
      stopping.add(job.header().number());
    }
    Amounts amounts = new Amounts(bench.shown(job));
    stops = stops.plus(Stops.of(job.header().number(), worked.verdicts(), amounts));
  }
}

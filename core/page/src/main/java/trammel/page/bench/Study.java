package trammel.page.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import trammel.app.desk.Workbench;
import trammel.app.text.Amounts;
import trammel.app.text.Stops;
import trammel.assembly.Assembly;
import trammel.engine.checks.CheckResult;
import trammel.planning.arrange.OptionChanges;
import trammel.planning.draft.Draft;
import trammel.planning.estimate.Estimate;
import trammel.planning.job.Job;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.planning.vehicle.FinishedVehicle;
import trammel.reading.quantity.UnitSystem;

/** One job worked out as far as was asked: each step is made when it is first needed, and kept. */
public final class Study {
  private final Bench bench;
  private final JobDocument document;
  private final List<String> remarks = new ArrayList<>();
  private Job job;
  private Draft draft;
  private List<CheckResult> verdicts;
  private List<CheckResult> judged;
  private OptionChanges.Found optionChanges;
  private Estimate estimate;
  private Assembly assembly;

  Study(Bench bench, JobDocument document) {
    this.bench = bench;
    this.document = document;
  }

  /** What the file says. */
  public JobDocument document() {
    return document;
  }

  /**
   * The job as read.
   *
   * @throws trammel.reading.tree.BadInputException with everything that is wrong with it
   */
  public synchronized Job job() {
    if (job == null) {
      job = JobReader.read(document);
    }
    return job;
  }

  /** The job with its layout. */
  public synchronized Draft draft() {
    if (draft == null) {
      Job read = job();
      draft = bench.with(workbench -> workbench.draft(read, workbench.extensions()), remarks);
    }
    return draft;
  }

  /** Every check, worst first, without changes tried. */
  public synchronized List<CheckResult> verdicts() {
    if (judged != null) {
      return judged;
    }
    if (verdicts == null) {
      verdicts = draft().judge().verdicts(draft().layout());
    }
    return verdicts;
  }

  /** Every check, worst first, with a tried change where one is needed. */
  public synchronized List<CheckResult> judged() {
    if (judged == null) {
      judged = draft().judge().judge(draft().layout());
    }
    return judged;
  }

  /** Changes of options that mend what no move of a point does, tried. */
  public synchronized OptionChanges.Found optionChanges() {
    if (optionChanges == null) {
      Draft drawn = draft();
      List<CheckResult> results = judged();
      optionChanges =
          new OptionChanges(bench.extensions(), bench.catalog(), OptionChanges.USUAL_BUDGET)
              .of(drawn, results);
    }
    return optionChanges;
  }

  /**
   * Plan, hours and price.
   *
   * @throws trammel.app.commandline.CommandFailure if something of the job cannot be made
   */
  public synchronized Estimate estimate() {
    if (estimate == null) {
      Draft drawn = draft();
      estimate = bench.with(workbench -> workbench.estimate(drawn), remarks);
    }
    return estimate;
  }

  /** The finished vehicle. */
  public synchronized Assembly assembly() {
    if (assembly == null) {
      assembly = FinishedVehicle.of(draft().layout(), bench.catalog(), estimate().plan());
    }
    return assembly;
  }

  /** What is to be looked at besides: old prices, plugins that were left out. */
  public synchronized List<String> remarks() {
    return List.copyOf(remarks);
  }

  /** The units of the job. */
  public UnitSystem units() {
    return job().header().units();
  }

  /** Prints in the units of the job. */
  public Amounts amounts() {
    return new Amounts(units());
  }

  /** What the checks say stop to. */
  public Stops stops() {
    return Stops.of(job().header().number(), verdicts(), amounts());
  }

  /**
   * Asks the workbench. What is asked must not ask a study in turn: a study waits for the
   * workbench, never the other way round.
   */
  public <T> T with(Function<Workbench, T> asked) {
    return bench.with(asked);
  }
}

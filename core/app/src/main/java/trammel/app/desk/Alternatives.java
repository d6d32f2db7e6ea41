package trammel.app.desk;

import java.util.List;
import java.util.Optional;
import trammel.engine.checks.CheckResult;
import trammel.planning.draft.Draft;
import trammel.planning.estimate.Estimate;
import trammel.planning.extension.PluginFaultException;
import trammel.planning.job.Chosen;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.reading.tree.BadInputException;

/**
 * Works out other ways to do a job. They may run plugins that the job itself does not name; what
 * goes wrong in one of these costs that one way and nothing else.
 */
public final class Alternatives {
  private final Workbench bench;
  private final Chosen own;

  /**
   * One way, or why it is left out.
   *
   * @param estimate the job done this way; empty if it is left out
   * @param checks its checks
   * @param reason why it is left out
   * @param faulty whether it is left out for a plugin's fault
   */
  public record Way(
      Optional<Estimate> estimate, List<CheckResult> checks, String reason, boolean faulty) {
    /** Copies the list. */
    public Way {
      checks = List.copyOf(checks);
    }

    private static Way leftOut(String reason, boolean faulty) {
      return new Way(Optional.empty(), List.of(), reason, faulty);
    }
  }

  /**
   * @param bench where they are worked out
   * @param own what the job itself chooses
   */
  public Alternatives(Workbench bench, Chosen own) {
    this.bench = bench;
    this.own = own;
  }

  /**
   * Works out one way.
   *
   * @throws BadInputException if the document of this way is not right
   * @throws PluginFaultException if a plugin fails that the job itself names
   */
  public Way of(JobDocument document) {
    try {
      Draft draft = bench.draft(document);
      Estimate estimate = bench.estimate(draft);
      List<CheckResult> checks = draft.judge().verdicts(draft.layout());
      return new Way(Optional.of(estimate), checks, "", false);
    } catch (BadInputException wrong) {
      throw wrong;
    } catch (RuntimeException | StackOverflowError thrown) {
      return leftOut(document, thrown);
    }
  }

  private Way leftOut(JobDocument document, Throwable thrown) {
    if (thrown instanceof PluginFaultException fault && !isOwn(fault.id())) {
      return Way.leftOut(fault.getMessage(), true);
    }
    Optional<String> refusal = Refusal.message(thrown);
    if (refusal.isPresent()) {
      return Way.leftOut(refusal.get(), false);
    }
    Chosen tried = JobReader.read(document).chosen();
    for (String id : List.of(tried.linkage(), tried.spring())) {
      if (!isOwn(id) && !(thrown instanceof PluginFaultException)) {
        return Way.leftOut(
            "Plugin "
                + id
                + " answered what cannot be worked with: "
                + thrown.getClass().getSimpleName()
                + ".",
            true);
      }
    }
    if (thrown instanceof Error error) {
      throw error;
    }
    throw (RuntimeException) thrown;
  }

  private boolean isOwn(String id) {
    return id.equals(own.linkage()) || id.equals(own.spring());
  }
}

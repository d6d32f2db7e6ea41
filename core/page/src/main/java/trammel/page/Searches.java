package trammel.page;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import trammel.app.desk.Refusal;
import trammel.page.folder.JobText;
import trammel.page.folder.Refused;
import trammel.planning.arrange.ArrangeListener;
import trammel.planning.arrange.Arrangement;

/** Searches for layouts that are under way or done, at most one a job and one at a time. */
final class Searches {
  private final Map<String, Search> byFile = new ConcurrentHashMap<>();

  /** One search: how far it is, and what it found. */
  static final class Search implements ArrangeListener {
    private final JobText job;
    private volatile Progress progress = new Progress(0, 1, 0);
    private volatile boolean stopped;
    private volatile Optional<Arrangement> found = Optional.empty();
    private volatile Optional<String> refused = Optional.empty();

    private Search(JobText job) {
      this.job = job;
    }

    /** The job as it was when the search began. */
    JobText job() {
      return job;
    }

    Progress now() {
      return progress;
    }

    Optional<Arrangement> found() {
      return found;
    }

    Optional<String> refused() {
      return refused;
    }

    boolean isRunning() {
      return found.isEmpty() && refused.isEmpty();
    }

    void stop() {
      stopped = true;
    }

    @Override
    public void progress(Progress now) {
      progress = now;
    }

    @Override
    public boolean isStopped() {
      return stopped;
    }
  }

  /**
   * Begins a search.
   *
   * @param work searches and tells how far it is
   * @throws Refused if another is under way
   */
  synchronized Search begin(JobText job, Function<Search, Arrangement> work) {
    if (byFile.values().stream().anyMatch(Search::isRunning)) {
      throw new Refused(409, "A search is under way already; wait for it or end it.");
    }
    Search search = new Search(job);
    byFile.put(job.name(), search);
    Thread thread = new Thread(() -> run(search, work), "arrange " + job.name());
    thread.setDaemon(true);
    thread.start();
    return search;
  }

  private static void run(Search search, Function<Search, Arrangement> work) {
    try {
      search.found = Optional.of(work.apply(search));
    } catch (RuntimeException | StackOverflowError thrown) {
      search.refused =
          Optional.of(
              Refusal.message(thrown)
                  .orElse("The search met a fault: " + thrown.getClass().getSimpleName() + "."));
    }
  }

  /** The search of a job, if there was one since the start. */
  Optional<Search> of(String file) {
    return Optional.ofNullable(byFile.get(file));
  }

  /** Ends all of them. */
  void stop() {
    byFile.values().forEach(Search::stop);
  }
}

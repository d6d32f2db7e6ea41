package trammel.page.bench;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import trammel.app.commandline.Screen;
import trammel.app.desk.EarlyReading;
import trammel.app.desk.Workbench;
import trammel.page.folder.JobText;
import trammel.page.folder.TextFile;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.draft.Extensions;
import trammel.planning.job.JobDocument;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.WrittenDocument;

/**
 * Works out the jobs of one folder, the way the commands do it. What was worked out of a text is
 * kept while it is among the last that were asked for.
 */
public final class Bench {
  private static final int MOST_STUDIES = 12;

  private final Path folder;
  private final EarlyReading first;
  private final StringWriter remarks = new StringWriter();
  private final Map<String, Study> studies =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Study> eldest) {
          return size() > MOST_STUDIES;
        }
      };
  private String state;
  private String prices = "not looked at yet";
  private Workbench workbench;

  /**
   * @param folder the folder of jobs, with the shop's own catalog in it if there is one
   * @param reading the installed copy, being read
   */
  public Bench(Path folder, EarlyReading reading) {
    this.folder = folder;
    first = reading;
    state = ShopFiles.state(folder);
    workbench = workbench(reading);
  }

  private Workbench workbench(EarlyReading reading) {
    PrintWriter told = new PrintWriter(remarks, true);
    Workbench bench =
        new Workbench(reading, Optional.empty(), new Screen(told, told, false, false));
    bench.begin(folder.resolve("any.yaml"));
    return bench;
  }

  /**
   * Reads the shop's catalog again if it, or the closed jobs of the ledger, are other than they
   * were read. What else is written into the ledger, such as a payment or a reading after tacking,
   * is told to the pages and changes no price.
   *
   * @return tells one state of them from another
   */
  public String refresh() {
    String now = ShopFiles.state(folder);
    synchronized (this) {
      if (!now.equals(state)) {
        if (prices.equals(ShopFiles.prices(folder))) {
          state = now;
        } else {
          readAnew();
        }
      }
    }
    return now;
  }

  /** Reads the shop's catalog again, after something of it was changed. */
  public synchronized void readAnew() {
    state = ShopFiles.state(folder);
    prices = ShopFiles.prices(folder);
    workbench = workbench(first.again());
    synchronized (studies) {
      studies.clear();
    }
  }

  /** The installed copy, read once more, for a command that is run here. */
  public EarlyReading reading() {
    return first.again();
  }

  /**
   * The standard catalog with what plugins bring, to be finished once.
   *
   * @param shop the shop's own folders, which say by which sizes it is
   */
  public CatalogReader catalogReader(List<Path> shop) {
    return reading().catalog(shop);
  }

  /** What the shop can buy and do, and its limits. */
  public Catalog catalog() {
    return with(Workbench::catalog);
  }

  /** The linkages, springs and additions that are installed. */
  public Extensions extensions() {
    return with(bench -> bench.extensions().extensions());
  }

  /** What is wrong with plugins. */
  public List<String> troubles() {
    return with(bench -> bench.extensions().troubles());
  }

  /** Asks the workbench, which is used by one at a time. */
  public synchronized <T> T with(Function<Workbench, T> asked) {
    return asked.apply(workbench);
  }

  /** Asks the workbench, and takes what it had to remark. */
  synchronized <T> T with(Function<Workbench, T> asked, List<String> remarked) {
    remarks.getBuffer().setLength(0);
    try {
      return asked.apply(workbench);
    } finally {
      remarks.toString().lines().forEach(remarked::add);
      remarks.getBuffer().setLength(0);
    }
  }

  /** The study of a job file. */
  public Study study(JobText job) {
    return kept(
        job.name() + "\n" + job.revision(),
        () -> new Study(this, JobDocument.of(job.name(), TextFile.withoutMark(job.text()))));
  }

  /** The study of a job with changes that stand in no file yet. */
  public Study study(JobText job, ObjectNode changed) {
    return new Study(this, new JobDocument(job.name(), changed));
  }

  /** What a job file says. */
  public static ObjectNode root(JobText job) {
    return WrittenDocument.of(job.name(), TextFile.withoutMark(job.text())).root();
  }

  private Study kept(String key, Supplier<Study> make) {
    synchronized (studies) {
      Study kept = studies.get(key);
      if (kept != null) {
        return kept;
      }
    }
    Study made = make.get();
    synchronized (studies) {
      return studies.computeIfAbsent(key, any -> made);
    }
  }
}

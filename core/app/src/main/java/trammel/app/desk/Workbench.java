package trammel.app.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.Screen;
import trammel.app.ledger.LearnedMemory;
import trammel.app.ledger.ShopLedger;
import trammel.app.plugins.InstalledExtensions;
import trammel.app.rack.RackFile;
import trammel.app.text.Amounts;
import trammel.app.text.Stops;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.work.WorkPlan;
import trammel.cutting.background.Background;
import trammel.engine.checks.CheckResult;
import trammel.engine.quantity.Phrase;
import trammel.ledger.NativeLibrary;
import trammel.planning.arrange.FirstFit;
import trammel.planning.catalog.Catalog;
import trammel.planning.draft.Draft;
import trammel.planning.draft.Drafting;
import trammel.planning.estimate.Estimate;
import trammel.planning.estimate.Estimating;
import trammel.planning.job.Job;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.planning.learning.LearnedHours;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.Problem;
import trammel.trade.money.PriceTerms;

/**
 * Takes a job from its file to its layout and its estimate. Catalog and plugins are loaded once,
 * when they are first needed; what is wrong with a plugin is told once.
 */
public final class Workbench {
  private final EarlyReading reading;
  private final Optional<UnitSystem> units;
  private final Screen screen;
  private final List<Path> over;
  private Path jobFolder;
  private Background<Catalog> catalog;
  private Optional<LearnedHours> learned;
  private final Set<String> oldPricesTold = new HashSet<>();
  private boolean troublesTold;

  /**
   * @param reading the installed copy's catalog and plugins
   * @param units the units to show; the job's own when empty
   * @param screen takes remarks
   */
  public Workbench(EarlyReading reading, Optional<UnitSystem> units, Screen screen) {
    this(reading, units, screen, List.of());
  }

  /**
   * @param reading the installed copy's catalog and plugins
   * @param units the units to show; the job's own when empty
   * @param screen takes remarks
   * @param over catalog folders that are read over the shop's own
   */
  public Workbench(
      EarlyReading reading, Optional<UnitSystem> units, Screen screen, List<Path> over) {
    this.reading = reading;
    this.units = units;
    this.screen = screen;
    this.over = List.copyOf(over);
  }

  /** The standard catalog, with what the shop keeps beside its jobs read over it. */
  public Catalog catalog() {
    startReading();
    return catalog.get();
  }

  /** What the plugins folder yields; what is wrong with it is told the first time. */
  public InstalledExtensions extensions() {
    InstalledExtensions found = reading.extensions();
    if (!troublesTold) {
      troublesTold = true;
      for (String trouble : found.troubles()) {
        screen.err().println("Note: " + trouble);
      }
    }
    return found;
  }

  /** Reads the catalog and loads the plugins while the job file is read. */
  private void startReading() {
    if (catalog == null) {
      List<Path> shop = new ArrayList<>();
      if (jobFolder != null) {
        ShopCatalog.beside(jobFolder).ifPresent(shop::add);
      }
      shop.addAll(over);
      catalog = Background.start(() -> reading.catalog(shop).finish(shop));
    }
  }

  /** The units in which a job is shown. */
  public UnitSystem shown(Job job) {
    return units.orElse(job.header().units());
  }

  /** The job of a file with its layout. */
  public Draft draft(Path file) {
    JobDocument document = load(file);
    try {
      return draft(document);
    } catch (UnworkableLayoutException noRoom) {
      String advice =
          new FirstFit(extensions().extensions(), catalog()).advice(document, noRoom.reason());
      throw new UnworkableLayoutException(Phrase.of("{}{}", noRoom.reason(), advice));
    }
  }

  /** The document of a job file; the first one loaded says where the shop's own catalog is. */
  public JobDocument load(Path file) {
    begin(file);
    refuseOtherCatalog(file);
    return JobDocument.load(file);
  }

  /**
   * Says where the shop's own catalog is, unless that is known already: beside this job file. From
   * then on jobs may be loaded, drawn and planned on several threads.
   */
  public void begin(Path file) {
    if (jobFolder == null) {
      jobFolder = file.toAbsolutePath().getParent();
    }
    startReading();
  }

  /** One run has one catalog; that of another folder would be left out without a word. */
  private void refuseOtherCatalog(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    if (folder.equals(jobFolder)) {
      return;
    }
    Optional<Path> other = ShopCatalog.beside(folder);
    if (other.isPresent() && !isSame(other.get(), ShopCatalog.beside(jobFolder))) {
      throw CommandFailure.badInput(
          file
              + " has a catalog of its own beside it, "
              + other.get()
              + ", and the catalog beside the first job file counts for all jobs of a run. Run this"
              + " job by itself, or with those of its folder.");
    }
  }

  private static boolean isSame(Path one, Optional<Path> other) {
    try {
      return other.isPresent() && Files.isSameFile(one, other.get());
    } catch (IOException unread) {
      return false;
    }
  }

  /** The job of a document with its layout; what is to be looked at in it goes to the remarks. */
  public Draft draft(JobDocument document) {
    Job job = JobReader.read(document);
    tellWarnings(job);
    return draft(job, extensions());
  }

  /**
   * The layout of a job that was read, with the plugins at hand; tells nothing.
   *
   * @throws UnworkableLayoutException if it does not fit, in the words and units of the reader
   */
  public Draft draft(Job job, InstalledExtensions installed) {
    try {
      return new Drafting(installed.extensions(), catalog()).draft(job, shown(job));
    } catch (UnworkableLayoutException noRoom) {
      String words = noRoom.reason().in(new QuantityPrinter(shown(job)));
      throw new UnworkableLayoutException(Phrase.text(words));
    }
  }

  /** Tells what is to be looked at in a job. */
  public void tellWarnings(Job job) {
    for (Problem warning : job.warnings()) {
      screen.err().println("Note: " + warning.text());
    }
  }

  /** The shop's ledger, beside the first job file. */
  public ShopLedger shopLedger(UnitSystem rackUnits) {
    NativeLibrary.keepIn(reading.installation().caches());
    return new ShopLedger(jobFolder, file -> new RackFile(file, catalog(), rackUnits).read());
  }

  /**
   * The ledger of the shop whose jobs are in a folder.
   *
   * @param rackUnits the unit system of bare numbers in a rack file of before
   */
  public ShopLedger shopIn(Path folder, UnitSystem rackUnits) {
    jobFolder = folder.toAbsolutePath().normalize();
    return shopLedger(rackUnits);
  }

  /** The estimate of a job by the shop's own hours, as far as its closed jobs say. */
  public Estimate estimate(Draft draft) {
    return estimate(draft, learned());
  }

  /** The estimate of a job by the catalog's hours. */
  public Estimate standardEstimate(Draft draft) {
    return estimate(draft, Optional.empty());
  }

  /** What the shop's closed jobs tell, after another was closed. */
  public Optional<LearnedHours> learnedAnew() {
    learned = null;
    return learned();
  }

  /**
   * What the quote of a job is made of, for any of its layouts: terms and learned hours are read
   * once, so that several threads may ask.
   */
  public Function<Draft, Estimate> quoting(Job job) {
    Estimating estimating =
        new Estimating(catalog(), terms(job), catalog().shop().hoursCorrelation(), learned());
    return draft -> estimating.estimate(draft, draft.work());
  }

  private Optional<LearnedHours> learned() {
    if (learned == null) {
      Installation installation = reading.installation();
      learned =
          shopLedger(UnitSystem.US)
              .learned(
                  catalog().shop().hoursCorrelation(),
                  new LearnedMemory(installation.caches(), installation.program()));
    }
    return learned;
  }

  private Estimate estimate(Draft draft, Optional<LearnedHours> learned) {
    tellOldPrices(draft.job());
    return new Estimating(
            catalog(), terms(draft.job()), catalog().shop().hoursCorrelation(), learned)
        .estimate(draft, work(draft));
  }

  /**
   * All the work of a job.
   *
   * @throws CommandFailure in the words of its checks if something of it cannot be made, so that
   *     nothing of it can be listed, priced or ordered
   */
  private WorkPlan work(Draft draft) {
    try {
      return draft.work();
    } catch (UnworkableLayoutException cannot) {
      Job job = draft.job();
      Amounts amounts = new Amounts(shown(job));
      List<CheckResult> verdicts = draft.judge().verdicts(draft.layout());
      throw CommandFailure.stopped(
          Stops.of(job.header().number(), verdicts, amounts).text().strip()
              + "\nNothing can be listed, priced or ordered until it can be made. 'trammel check'"
              + " says what to change.");
    }
  }

  /**
   * All that is bought for a job, without its cutting, its hours and its price: an order over many
   * jobs cuts them together. Tells nothing.
   */
  public WorkPlan toBuy(Draft draft) {
    terms(draft.job());
    return Estimating.toBuy(work(draft), draft.job().terms(), catalog());
  }

  private PriceTerms terms(Job job) {
    try {
      return catalog().shop().termsFor(job.terms());
    } catch (IllegalArgumentException refused) {
      throw CommandFailure.badInput(
          "job "
              + job.header().number()
              + ", its terms with the shop's usual ones: "
              + refused.getMessage());
    }
  }

  /** Tells, once a file of the catalog, that its prices are old by the job's date. */
  public void tellOldPrices(Job job) {
    for (Map.Entry<String, LocalDate> file : catalog().oldPrices(job.header().date()).entrySet()) {
      if (oldPricesTold.add(file.getKey())) {
        screen
            .err()
            .println(
                "Note: "
                    + file.getKey()
                    + ": the prices are of "
                    + file.getValue()
                    + ", more than "
                    + catalog().shop().priceDays()
                    + " days before the job's date, "
                    + job.header().date()
                    + ". Ask for new ones before this is quoted or ordered.");
      }
    }
  }
}

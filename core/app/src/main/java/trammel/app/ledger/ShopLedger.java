package trammel.app.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import trammel.app.commandline.CommandFailure;
import trammel.ledger.Ledger;
import trammel.ledger.LedgerPlace;
import trammel.ledger.LedgerPrint;
import trammel.planning.learning.ClosedJob;
import trammel.planning.learning.LearnedHours;
import trammel.planning.rack.Rack;

/**
 * The ledger of the shop whose jobs are in a folder, and the lists that were kept there before: the
 * first command that writes takes these over, once, and keeps them under another name.
 */
public final class ShopLedger {
  private static final String OLD_RACK = "rack.csv";

  private final Path folder;
  private final Function<Path, Rack> rackReader;
  private final LedgerPlace place;

  /**
   * @param folder the folder of the jobs
   * @param rackReader reads a rack from a CSV; called only where there is one to take over
   * @throws IllegalArgumentException if the ledger's name is a link to nothing
   */
  public ShopLedger(Path folder, Function<Path, Rack> rackReader) {
    this.folder = folder.toAbsolutePath().normalize();
    this.rackReader = rackReader;
    place = place();
  }

  /** An old list that is a link leads to where the shop keeps its books: the ledger goes there. */
  private LedgerPlace place() {
    LedgerPlace own = LedgerPlace.in(folder);
    Path old = folder.resolve(OldHistory.NAME);
    if (own.exists() || !Files.isSymbolicLink(old)) {
      return own;
    }
    try {
      Path target = folder.resolve(Files.readSymbolicLink(old)).normalize();
      LedgerPlace there = LedgerPlace.in(target.getParent());
      if (!Files.exists(target) && !there.exists()) {
        throw CommandFailure.badInput(
            old
                + " is a link to "
                + target
                + ", where no file is. Bring the file back, or take the link away.");
      }
      return there;
    } catch (IOException refused) {
      throw CommandFailure.couldNotRead(old, refused);
    }
  }

  /** Where the ledger is, or will be. */
  public LedgerPlace ledgerPlace() {
    return place;
  }

  /** True if there is a ledger, or a list of before that it will be made from. */
  public boolean hasAnything() {
    return place.exists() || hasOldHistory() || Files.exists(folder.resolve(OLD_RACK));
  }

  /** True if jobs were closed before there was a ledger and are not in it yet. */
  public boolean hasOldHistory() {
    return Files.exists(folder.resolve(OldHistory.NAME));
  }

  /**
   * The shop's own hours as its closed jobs tell them; empty if none is closed.
   *
   * @param correlation how much the hours of a job's operations run over together, 0 to 1
   * @param memory where what was learned is kept, so that it need not be learned anew
   */
  public Optional<LearnedHours> learned(double correlation, LearnedMemory memory) {
    Optional<LedgerPrint> print =
        place.exists() && !hasOldHistory() ? LedgerPrint.of(place.file()) : Optional.empty();
    if (print.isPresent()) {
      Optional<LearnedHours> known = memory.recall(place.file(), print.get(), correlation);
      if (known.isPresent()) {
        return known.filter(hours -> hours.jobs() > 0);
      }
    }
    LearnedHours learned = LearnedHours.from(closedJobs(), correlation);
    if (print.isPresent() && print.equals(LedgerPrint.of(place.file()))) {
      memory.keep(place.file(), print.get(), correlation, learned);
    }
    return learned.jobs() > 0 ? Optional.of(learned) : Optional.empty();
  }

  /** The closed jobs, whether or not they are taken over yet. Writes nothing. */
  public List<ClosedJob> closedJobs() {
    List<ClosedJob> jobs = new ArrayList<>();
    if (place.exists()) {
      try (Ledger ledger = Ledger.openExisting(place.file())) {
        jobs.addAll(ledger.closedJobs().all());
      }
    }
    if (hasOldHistory()) {
      jobs.addAll(notAmong(jobs, OldHistory.read(folder.resolve(OldHistory.NAME)).jobs()));
    }
    return jobs;
  }

  private static List<ClosedJob> notAmong(List<ClosedJob> known, List<ClosedJob> others) {
    Set<String> numbers = known.stream().map(ClosedJob::number).collect(Collectors.toSet());
    return others.stream().filter(job -> !numbers.contains(job.number())).toList();
  }

  /** What is on the rack, whether or not it is taken over yet. Writes nothing. */
  public Rack rack() {
    Path old = folder.resolve(OLD_RACK);
    if (place.exists()) {
      try (Ledger ledger = Ledger.openExisting(place.file())) {
        if (!takesOver(ledger, old)) {
          return ledger.rackStock().rack();
        }
      }
    }
    return Files.exists(old) ? rackReader.apply(old) : Rack.EMPTY;
  }

  /**
   * Opens the ledger to be written, made if there is none, and takes over what was kept before.
   *
   * @param remarks takes what is to be told of it
   * @throws CommandFailure if what was kept before cannot be read, or not be put aside
   */
  public Ledger open(Consumer<String> remarks) {
    place.warning().ifPresent(remarks);
    List<ClosedJob> old = oldJobs(remarks);
    Ledger ledger = Ledger.open(place.file());
    try {
      takeOverHistory(ledger, old, remarks);
      takeOverRack(ledger, remarks);
      link();
      return ledger;
    } catch (RuntimeException | Error thrown) {
      ledger.close();
      throw thrown;
    }
  }

  /** Read before the ledger is made: a list that is damaged leaves everything as it was. */
  private List<ClosedJob> oldJobs(Consumer<String> remarks) {
    if (!hasOldHistory()) {
      return List.of();
    }
    OldHistory.Content content = OldHistory.read(folder.resolve(OldHistory.NAME));
    content.notes().forEach(remarks);
    return content.jobs();
  }

  /** Killed after the change and before the renaming, the next command finds nothing to add. */
  private void takeOverHistory(Ledger ledger, List<ClosedJob> old, Consumer<String> remarks) {
    if (!hasOldHistory()) {
      return;
    }
    int taken =
        ledger.asOne(
            () -> {
              List<ClosedJob> missing = notAmong(ledger.closedJobs().all(), old);
              missing.forEach(ledger.closedJobs()::close);
              return missing.size();
            });
    Path kept = putAside(folder.resolve(OldHistory.NAME));
    remarks.accept(
        taken
            + (taken == 1 ? " closed job" : " closed jobs")
            + " of "
            + OldHistory.NAME
            + " taken over into "
            + ledger.file()
            + "; the old file is kept as "
            + kept
            + ".");
  }

  private boolean takesOver(Ledger ledger, Path old) {
    return Files.exists(old) && ledger.rackStock().movements().isEmpty();
  }

  private void takeOverRack(Ledger ledger, Consumer<String> remarks) {
    Path old = folder.resolve(OLD_RACK);
    if (!takesOver(ledger, old)) {
      return;
    }
    Rack rack = rackReader.apply(old);
    ledger.asOne(
        () -> {
          // Asked again with the right to write: another command may have been first.
          if (ledger.rackStock().movements().isEmpty()) {
            ledger.rackStock().become(rack, "taken over from " + OLD_RACK);
          }
          return null;
        });
    Path kept = putAside(old);
    remarks.accept(
        "The rack of "
            + OLD_RACK
            + " is taken over into "
            + ledger.file()
            + "; the old file is kept as "
            + kept
            + ".");
  }

  /** The file that a link leads to gets the other name; the link itself goes. */
  private static Path putAside(Path old) {
    try {
      Path real = old.toRealPath();
      String name = real.getFileName().toString();
      int dot = name.lastIndexOf('.');
      Path kept =
          free(real.getParent(), name.substring(0, dot) + "-taken-over", name.substring(dot));
      Files.move(real, kept);
      if (Files.isSymbolicLink(old)) {
        Files.delete(old);
      }
      return kept;
    } catch (IOException refused) {
      throw CommandFailure.couldNotWrite(old, refused);
    }
  }

  /** A name in a folder that no file has yet. */
  public static Path free(Path folder, String start, String end) {
    Path free = folder.resolve(start + end);
    for (int i = 2; Files.exists(free, LinkOption.NOFOLLOW_LINKS); i++) {
      free = folder.resolve(start + "-" + i + end);
    }
    return free;
  }

  /** Where an old list was a link, the ledger is one too, to the place that all of them share. */
  private void link() {
    Path own = folder.resolve(LedgerPlace.NAME);
    try {
      if (!Files.exists(own, LinkOption.NOFOLLOW_LINKS)
          && !own.toAbsolutePath().equals(place.file())
          && !folder.toRealPath().equals(place.file().getParent())) {
        Files.createSymbolicLink(own, place.file());
      }
    } catch (IOException refused) {
      throw CommandFailure.couldNotWrite(own, refused);
    }
  }
}

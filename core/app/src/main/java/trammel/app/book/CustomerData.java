package trammel.app.book;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.JobLabel;
import trammel.app.files.OwnList;

/**
 * Where a customer's data lie in the shop's folder: job files, what the page keeps beside them, and
 * the folders that Trammel wrote for these jobs.
 *
 * @param jobs the numbers of the customer's jobs
 * @param files what can be deleted: job files, what belongs to them, and files that were written
 * @param copies copies of the ledger, in which the data still are
 */
public record CustomerData(Set<String> jobs, List<Path> files, List<Path> copies) {
  private static final String PAGE_FOLDER = ".trammel-page";
  private static final List<String> FORMS =
      List.of(".fitup.csv", ".actuals.csv", ".sheet.csv", ".signed.csv");

  public CustomerData {
    jobs = Set.copyOf(jobs);
    files = List.copyOf(files);
    copies = List.copyOf(copies);
  }

  /**
   * What there is.
   *
   * @param folder the shop's folder
   * @param who the number of a job, or the name of a customer
   * @param known the jobs that the ledger has of them
   */
  public static CustomerData of(Path folder, String who, Set<String> known) {
    Set<String> jobs = new LinkedHashSet<>(known);
    List<Path> files = new ArrayList<>();
    List<Path> copies = new ArrayList<>();
    try {
      try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
        for (Path file : all) {
          String name = file.getFileName().toString();
          if (name.matches("ledger.*\\.sqlite.*") && !name.equals("ledger.sqlite")) {
            copies.add(file);
          }
          Optional<JobLabel> job = JobLabel.of(file).filter(one -> isTheirs(one, who, known));
          if (job.isPresent()) {
            jobs.add(job.get().number());
            files.add(file);
            addBeside(files, file);
          }
        }
      }
      addWritten(files, folder, jobs);
    } catch (IOException refused) {
      throw CommandFailure.couldNotRead(folder, refused);
    }
    return new CustomerData(
        jobs, files.stream().sorted().distinct().toList(), copies.stream().sorted().toList());
  }

  private static boolean isTheirs(JobLabel job, String who, Set<String> known) {
    return known.contains(job.number()) || job.number().equals(who) || isSame(job.customer(), who);
  }

  /** The forms of a job beside it, and what the page notes of it. */
  private static void addBeside(List<Path> files, Path job) throws IOException {
    String name = job.getFileName().toString();
    String stem = name.substring(0, name.lastIndexOf('.'));
    for (String form : FORMS) {
      Path file = job.resolveSibling(stem + form);
      if (Files.exists(file)) {
        files.add(file);
      }
    }
    Path page = job.resolveSibling(PAGE_FOLDER);
    if (Files.isDirectory(page, LinkOption.NOFOLLOW_LINKS)) {
      Files.walkFileTree(
          page,
          new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
              if (page.relativize(file).toString().startsWith(name + ".")) {
                files.add(file);
              }
              return FileVisitResult.CONTINUE;
            }
          });
    }
  }

  /** What was written for these jobs alone into folders within the shop's. */
  private static void addWritten(List<Path> files, Path folder, Set<String> jobs)
      throws IOException {
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult preVisitDirectory(Path inner, BasicFileAttributes attributes)
              throws IOException {
            files.addAll(OwnList.filesFor(inner, jobs));
            return FileVisitResult.CONTINUE;
          }
        });
  }

  /**
   * Deletes the files, and folders that are empty then.
   *
   * @return what could not be deleted
   */
  public List<Path> delete() {
    List<Path> left = new ArrayList<>();
    Set<Path> folders = new LinkedHashSet<>();
    for (Path file : files) {
      try {
        Files.deleteIfExists(file);
        folders.add(file.getParent());
      } catch (IOException refused) {
        left.add(file);
      }
    }
    folders.forEach(CustomerData::deleteEmpty);
    return left;
  }

  private static void deleteEmpty(Path folder) {
    try {
      Files.delete(folder);
      deleteEmpty(folder.getParent());
    } catch (IOException notEmpty) {
      // Something else lies in it, and stays.
      return;
    }
  }

  /** True if a name is that of a customer, whatever its capitals. */
  public static boolean isSame(String customer, String who) {
    return customer.toLowerCase(Locale.ROOT).equals(who.strip().toLowerCase(Locale.ROOT));
  }
}

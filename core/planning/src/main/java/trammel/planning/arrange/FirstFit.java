package trammel.planning.arrange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.brackets.UnworkableLayoutException;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.planning.draft.Drafting;
import trammel.planning.draft.Extensions;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.SpringMount;
import trammel.planning.job.Job;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.reading.tree.BadInputException;

/**
 * For a layout that does not fit: single changes of the job that were tried, and with which it
 * does.
 */
public final class FirstFit {
  /** Layouts that are tried before it is given up. */
  private static final int MOST_TRIED = 60;

  private static final int MOST_NAMED = 2;

  private final Extensions extensions;
  private final Catalog catalog;
  private int tried;

  /**
   * @param extensions the installed linkages, springs and additions
   * @param catalog what can be bought and done, and the limits
   */
  public FirstFit(Extensions extensions, Catalog catalog) {
    this.extensions = extensions;
    this.catalog = catalog;
  }

  /**
   * What a refusal may add: the changes with which the layout fits, or how many were tried in vain.
   *
   * @param document the job that was refused
   * @param refusal why
   */
  public String advice(JobDocument document, Phrase refusal) {
    List<String> fits = new ArrayList<>();
    for (Edits edits : changes(document, refusal)) {
      if (fits.size() == MOST_NAMED || tried == MOST_TRIED) {
        break;
      }
      if (fits(document, edits)) {
        edits
            .byPath()
            .forEach(
                (path, edit) ->
                    fits.add(
                        edit.text().isEmpty() ? path + " left out" : path + ": " + edit.text()));
      }
    }
    return fits.isEmpty()
        ? " None of "
            + tried
            + " single changes that were tried makes it fit; trammel arrange tries other linkages and"
            + " springs."
        : " Tried, and it fits: " + String.join(", or ", fits) + ".";
  }

  private boolean fits(JobDocument document, Edits edits) {
    tried++;
    try {
      Job job = JobReader.read(edits.in(document));
      new Drafting(extensions, catalog).draft(job, job.header().units());
      return true;
    } catch (UnworkableLayoutException | BadInputException noBetter) {
      return false;
    } catch (IllegalArgumentException impossible) {
      // The engine refuses bars that hold no axle and the like.
      return false;
    }
  }

  /** Options that the refusal names first, then words before lengths, then the ride. */
  private List<Edits> changes(JobDocument document, Phrase refusal) {
    Job job = JobReader.read(document);
    ShopStep step = new ShopStep(job.header().units());
    Optional<AxleLinkage> linkage =
        extensions.linkages().stream()
            .filter(one -> one.id().equals(job.chosen().linkage()))
            .findFirst();
    Optional<SpringMount> spring =
        extensions.springs().stream()
            .filter(one -> one.id().equals(job.chosen().spring()))
            .findFirst();
    if (linkage.isEmpty() || spring.isEmpty()) {
      return List.of();
    }
    List<Dial> dials =
        new Dials(document, Wishes.usual(), step)
            .of(linkage.get().options(catalog), spring.get().options(catalog));
    dials.addAll(Dials.mounting(linkage.get().options(catalog)));
    List<Edits> named = new ArrayList<>();
    List<Edits> words = new ArrayList<>();
    List<Edits> lengths = new ArrayList<>();
    for (Dial dial : dials) {
      List<Edits> edits = changes(document, dial, step);
      boolean isNamed = refusal.mentions(dial.key());
      (isNamed ? named : dial.isChoice() ? words : lengths).addAll(edits);
    }
    named.addAll(words);
    named.addAll(rideHeights(document, step));
    named.addAll(lengths);
    return named;
  }

  private static List<Edits> changes(JobDocument document, Dial dial, ShopStep step) {
    List<Edits> edits = new ArrayList<>();
    Optional<String> written = Dials.written(document, dial.path());
    if (dial.isChoice()) {
      dial.choices().stream()
          .filter(word -> !word.equals(written.orElse("")))
          .limit(3)
          .forEach(word -> edits.add(Edits.NONE.with(dial.path(), word, "")));
      written.ifPresent(word -> edits.add(Edits.NONE.with(dial.path(), "", "")));
      return edits;
    }
    if (written.isEmpty() && dial.usual().isEmpty()) {
      return edits;
    }
    double now =
        written
            .map(text -> step.value(dial.kind(), text))
            .orElseGet(() -> dial.usual().getAsDouble());
    for (int level = 0; level < 2; level++) {
      for (int way : new int[] {1, -1}) {
        double value = step.stepped(dial.kind(), now + way * step.stride(dial.kind(), level));
        if (value >= dial.least() && value <= dial.most()) {
          edits.add(Edits.NONE.with(dial.path(), step.text(dial.kind(), value), ""));
        }
      }
    }
    return edits;
  }

  private static List<Edits> rideHeights(JobDocument document, ShopStep step) {
    List<Edits> edits = new ArrayList<>();
    Dials.written(document, Dials.RIDE_HEIGHT)
        .map(text -> step.value(Dial.Kind.LENGTH, text))
        .ifPresent(
            mm -> {
              for (int level : new int[] {2, 1, 0}) {
                double higherMm = mm + step.stride(Dial.Kind.LENGTH, level);
                edits.add(
                    Edits.NONE.with(
                        Dials.RIDE_HEIGHT,
                        step.text(Dial.Kind.LENGTH, step.stepped(Dial.Kind.LENGTH, higherMm)),
                        ""));
              }
            });
    return edits;
  }
}

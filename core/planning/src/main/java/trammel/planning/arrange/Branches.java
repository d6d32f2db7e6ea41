package trammel.planning.arrange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.planning.catalog.Catalog;
import trammel.planning.draft.Extensions;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.SpringMount;
import trammel.planning.job.Chosen;
import trammel.planning.job.JobDocument;
import trammel.reading.fields.Field;

/**
 * The kinds of layout that a job may become: every linkage with every spring and side of the rails,
 * as far as the job does not keep its own.
 */
final class Branches {
  private static final String LINKAGE = "chosen.linkage";
  private static final String SPRING = "chosen.spring";
  private static final String MOUNTING = Dials.LINKAGE_OPTIONS + ".mounting";
  private static final String NOTHING = "{}";

  private final JobDocument document;
  private final Chosen own;
  private final Extensions extensions;
  private final Catalog catalog;
  private final Wishes wishes;

  Branches(
      JobDocument document, Chosen own, Extensions extensions, Catalog catalog, Wishes wishes) {
    this.document = document;
    this.own = own;
    this.extensions = extensions;
    this.catalog = catalog;
    this.wishes = wishes;
  }

  /** All of them, the job's own first. */
  List<Branch> all() {
    List<Branch> branches = new ArrayList<>();
    for (AxleLinkage linkage : linkages()) {
      for (SpringMount spring : springs()) {
        Edits kind = kind(linkage, spring);
        for (Optional<String> mounting : mountings(linkage)) {
          Edits edits =
              mounting.isEmpty()
                  ? kind
                  : kind.with(MOUNTING, mounting.get(), mounting.get() + " bars");
          branches.add(new Branch(branches.size(), linkage, spring, edits));
        }
      }
    }
    return branches;
  }

  /** Points that the job sets belong to its own linkage and spring. */
  private List<AxleLinkage> linkages() {
    boolean kept = wishes.keeps(LINKAGE) || !own.pickups().isEmpty();
    List<AxleLinkage> linkages = new ArrayList<>();
    extensions.linkages().stream()
        .filter(one -> one.id().equals(own.linkage()))
        .forEach(linkages::add);
    extensions.linkages().stream()
        .filter(one -> !kept && !one.id().equals(own.linkage()))
        .forEach(linkages::add);
    return linkages;
  }

  private List<SpringMount> springs() {
    boolean kept = wishes.keeps(SPRING) || !own.pickups().isEmpty();
    List<SpringMount> springs = new ArrayList<>();
    extensions.springs().stream()
        .filter(one -> one.id().equals(own.spring()))
        .forEach(springs::add);
    extensions.springs().stream()
        .filter(one -> !kept && !one.id().equals(own.spring()))
        .forEach(springs::add);
    return springs;
  }

  private Edits kind(AxleLinkage linkage, SpringMount spring) {
    Edits edits = Edits.NONE;
    if (!linkage.id().equals(own.linkage())) {
      edits =
          edits
              .with(LINKAGE, linkage.id(), "another linkage")
              .with(Dials.LINKAGE_OPTIONS, NOTHING, "options of the other linkage");
    }
    if (!spring.id().equals(own.spring())) {
      edits =
          edits
              .with(SPRING, spring.id(), "another spring")
              .with(Dials.SPRING_OPTIONS, NOTHING, "options of the other spring");
    }
    return edits;
  }

  /** Empty for the one that the job has, or leaves to the vehicle, where that is kept. */
  private List<Optional<String>> mountings(AxleLinkage linkage) {
    Optional<Field<?>> mounting =
        linkage.options(catalog).stream()
            .filter(option -> option.key().equals("mounting"))
            .findFirst();
    if (mounting.isEmpty() || wishes.keeps(MOUNTING) && linkage.id().equals(own.linkage())) {
      return List.of(Optional.empty());
    }
    Optional<String> written =
        linkage.id().equals(own.linkage()) ? Dials.written(document, MOUNTING) : Optional.empty();
    List<Optional<String>> mountings = new ArrayList<>();
    for (String word : mounting.get().choices()) {
      if (written.isPresent() && written.get().equals(word)) {
        mountings.add(0, Optional.empty());
      } else {
        mountings.add(Optional.of(word));
      }
    }
    return mountings;
  }
}

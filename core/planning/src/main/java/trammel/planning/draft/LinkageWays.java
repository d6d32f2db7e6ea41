package trammel.planning.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.brackets.material.EndFitting;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.Site;
import trammel.planning.options.JointPair;
import trammel.reading.fields.Field;
import trammel.reading.tree.Location;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.TextNode;

/**
 * What a job leaves to the vehicle of a linkage: on which side of the rails its bars run, and how
 * strong their joints are. Where the usual choice does not do, the next one is tried.
 */
final class LinkageWays {
  private static final String MOUNTING = "mounting";
  private static final String FRAME_END = "frame_end";
  private static final String AXLE_END = "axle_end";

  private final ObjectNode given;
  private final Catalog catalog;
  private final List<Field<?>> options;

  /**
   * @param given the linkage's options as the job sets them
   */
  LinkageWays(ObjectNode given, AxleLinkage linkage, Catalog catalog) {
    this.given = given;
    this.catalog = catalog;
    options = linkage.options(catalog);
  }

  /** The job's options with each mounting that it leaves open, the usual one first. */
  List<ObjectNode> mountings() {
    Optional<Field<?>> mounting = open(MOUNTING);
    if (mounting.isEmpty()) {
      return List.of(given);
    }
    return mounting.get().choices().stream().map(word -> with(given, MOUNTING, word)).toList();
  }

  /**
   * Options with each stronger pair of joints that the job leaves open: bushed ones first, the
   * weaker before the stronger.
   */
  List<ObjectNode> strongerJoints(ObjectNode chosen, Site usual) {
    if (open(FRAME_END).isEmpty() || open(AXLE_END).isEmpty()) {
      return List.of();
    }
    double workingN = JointPair.of(usual).map(JointPair::workingN).orElse(0.0);
    return JointPair.all(catalog).stream()
        .filter(pair -> pair.workingN() > workingN)
        .map(pair -> ends(chosen, pair.frame(), pair.axle()))
        .toList();
  }

  private ObjectNode ends(ObjectNode chosen, EndFitting frame, EndFitting axle) {
    return with(with(chosen, FRAME_END, frame.key()), AXLE_END, axle.key());
  }

  private static ObjectNode with(ObjectNode options, String key, String word) {
    Location where = options.location();
    return options.with(
        key,
        new TextNode(
            new Location(
                where.file(), where.line(), where.column(), Location.child(where.path(), key)),
            word));
  }

  /** An option that the linkage has and the job does not set. */
  private Optional<Field<?>> open(String key) {
    return given.find(key).isPresent()
        ? Optional.empty()
        : options.stream().filter(option -> option.key().equals(key)).findFirst();
  }

  /** What a refusal says of the ways that were tried. */
  static Phrase refusal(Map<String, Phrase> byMounting) {
    List<Phrase> refusals = new ArrayList<>(byMounting.size());
    byMounting.forEach(
        (mounting, reason) ->
            refusals.add(
                refusals.isEmpty()
                    ? reason
                    : Phrase.of("With mounting: {}, {}", mounting, reason)));
    return Phrase.joined(" ", refusals);
  }

  /** The mounting that options set; empty where they set none. */
  static String mounting(ObjectNode options) {
    return options.find(MOUNTING).isPresent()
            && options.find(MOUNTING).get() instanceof TextNode word
        ? word.text()
        : "";
  }
}

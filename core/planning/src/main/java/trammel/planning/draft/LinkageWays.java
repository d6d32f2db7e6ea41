package trammel.planning.draft;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.brackets.material.EndFitting;
import trammel.engine.layout.Joint;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.options.BarOptions;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
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
  List<ObjectNode> strongerJoints(ObjectNode chosen, FieldValues usual) {
    if (open(FRAME_END).isEmpty() || open(AXLE_END).isEmpty()) {
      return List.of();
    }
    EndFitting frame = catalog.end(usual.get(BarOptions.frameEnd(catalog)));
    EndFitting axle = catalog.end(usual.get(BarOptions.axleEnd(catalog)));
    double ratingN = Math.min(rating(frame), rating(axle));
    List<ObjectNode> ways = new ArrayList<>();
    for (EndFitting barrel : sorted(false)) {
      Optional<EndFitting> shank =
          sorted(true).stream()
              .filter(end -> rating(end) >= rating(barrel) && isAlike(end, barrel))
              .findFirst();
      if (rating(barrel) > ratingN && shank.isPresent()) {
        ways.add(ends(chosen, shank.get(), barrel));
      }
    }
    for (EndFitting swivel : sorted(true)) {
      if (rating(swivel) > ratingN && !isAlike(swivel, axle)) {
        ways.add(ends(chosen, swivel, swivel));
      }
    }
    return ways;
  }

  private static double rating(EndFitting end) {
    return end.joint().workingN();
  }

  /** Whether two joints give alike: both bushed, or both swivels. */
  private static boolean isAlike(EndFitting one, EndFitting other) {
    Joint first = one.joint();
    Joint second = other.joint();
    return first.radialStiffnessNPerMm() < 2 * second.radialStiffnessNPerMm()
        && second.radialStiffnessNPerMm() < 2 * first.radialStiffnessNPerMm();
  }

  private List<EndFitting> sorted(boolean threaded) {
    return catalog.ends().values().stream()
        .filter(end -> end.threaded() == threaded)
        .sorted(Comparator.comparingDouble(LinkageWays::rating))
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
  static String refusal(Map<String, String> byMounting) {
    StringBuilder text = new StringBuilder();
    byMounting.forEach(
        (mounting, message) ->
            text.append(text.length() == 0 ? "" : " With mounting: " + mounting + ", ")
                .append(message));
    return text.toString();
  }

  /** The mounting that options set; empty where they set none. */
  static String mounting(ObjectNode options) {
    return options.find(MOUNTING).isPresent()
            && options.find(MOUNTING).get() instanceof TextNode word
        ? word.text()
        : "";
  }
}

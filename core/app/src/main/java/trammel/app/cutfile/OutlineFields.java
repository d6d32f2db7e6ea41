package trammel.app.cutfile;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.app.cutfile.CutFields.Rule;
import trammel.cutting.outlines.OutlinePart;
import trammel.cutting.outlines.OutlinePoint;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.ListNode;
import trammel.reading.tree.NumberNode;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.Problems;

/** Reads the parts of an outline file. */
final class OutlineFields {
  /** A part as it should look. */
  static final String PART =
      "{\"id\": \"clevis\", \"qty\": 4, \"rotations\": [0, 90], \"polygon\": [[0, 0], [4, 0],"
          + " [0, 3]]}";

  private static final Rule COORDINATE = new Rule("-1000000", "1000000", 100, "2.25");
  private static final Rule TURN = new Rule("-360", "360", 100, "90");
  private static final Rule NUMBER_AS_ID = new Rule("0", "1000000000", 0, "7");
  private static final int MOST_CORNERS = 2000;
  private static final int MOST_TURNS = 360;

  private final Problems problems;
  private final CutFields fields;

  OutlineFields(Problems problems, CutFields fields) {
    this.problems = problems;
    this.fields = fields;
  }

  /** The id of a part, a text or a whole number. */
  Object id(ObjectNode entry) {
    Optional<DocumentNode> node = CutFields.given(entry, "id");
    if (node.isPresent() && node.get() instanceof NumberNode) {
      return fields.number(node.get(), NUMBER_AS_ID).intValue();
    }
    return fields.text(entry, "id", "\"clevis\"");
  }

  /** The part, unless anything is wrong with it. */
  Optional<OutlinePart> part(ObjectNode entry, String id, int quantity) {
    fields.remarkOnOtherKeys(entry, List.of("id", "qty", "rotations", "polygon", "label", "note"));
    List<Double> turns = new ArrayList<>();
    for (DocumentNode turn : fields.list(entry, "rotations", MOST_TURNS, "90")) {
      turns.add(fields.number(turn, TURN).doubleValue());
    }
    List<OutlinePoint> outline = new ArrayList<>();
    for (DocumentNode corner : fields.list(entry, "polygon", MOST_CORNERS, "[4, 3]")) {
      outline.add(corner(corner));
    }
    if (problems.hasErrors()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new OutlinePart(id, outline, turns, quantity));
    } catch (IllegalArgumentException refused) {
      String[] sentences = refused.getMessage().split("[.;] ", 2);
      problems.error(
          CutFields.place(entry, "polygon"),
          "corners that cannot be cut: " + sentences[0],
          "3 corners or more in order around the part, no side crossing another",
          sentences.length > 1 ? sentences[1] : "Check the corners.");
      return Optional.empty();
    }
  }

  private OutlinePoint corner(DocumentNode node) {
    if (node instanceof ListNode list && list.entries().size() == 2) {
      BigDecimal x = fields.number(list.entries().get(0), COORDINATE);
      BigDecimal y = fields.number(list.entries().get(1), COORDINATE);
      return new OutlinePoint(x.doubleValue(), y.doubleValue());
    }
    problems.error(node.location(), node.given(), "two numbers [x, y]", "Write it as [2.25, 3.5].");
    return new OutlinePoint(0, 0);
  }

  /** Width and height of a part in each way it may lie. */
  static List<double[]> ways(OutlinePart part) {
    List<double[]> ways = new ArrayList<>();
    for (double turnDeg : part.turnsDeg()) {
      double cos = Math.cos(Math.toRadians(turnDeg));
      double sin = Math.sin(Math.toRadians(turnDeg));
      double[] least = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
      double[] most = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
      for (OutlinePoint corner : part.outline()) {
        double[] at = {
          cos * corner.xMm() - sin * corner.yMm(), sin * corner.xMm() + cos * corner.yMm()
        };
        for (int i = 0; i < 2; i++) {
          least[i] = Math.min(least[i], at[i]);
          most[i] = Math.max(most[i], at[i]);
        }
      }
      ways.add(new double[] {most[0] - least[0], most[1] - least[1]});
    }
    return ways;
  }
}

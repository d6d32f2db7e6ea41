package trammel.planning.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.TubeNeed;
import trammel.engine.quantity.Phrase;
import trammel.planning.compare.Difference.Kind;
import trammel.planning.estimate.Estimate;
import trammel.planning.estimate.PartLine;
import trammel.trade.labour.OperationLine;
import trammel.trade.welding.WeldSeam;

/** Finds the lines that make the difference between two variants of a job. */
public final class Differences {
  private static final double SAME = 1e-6;

  private Differences() {}

  /** What the other variant has more, less or otherwise, the most hours first. */
  public static List<Difference> between(Estimate first, Estimate other) {
    List<Difference> differences = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      add(differences, kind, lines(kind, first), lines(kind, other));
    }
    return differences;
  }

  private static void add(
      List<Difference> differences, Kind kind, Map<String, Line> first, Map<String, Line> other) {
    Set<String> names = new LinkedHashSet<>(first.keySet());
    names.addAll(other.keySet());
    List<Difference> found = new ArrayList<>();
    for (String name : names) {
      Line a = first.getOrDefault(name, Line.NONE);
      Line b = other.getOrDefault(name, Line.NONE);
      if (Math.abs(a.amount() - b.amount()) > SAME) {
        Phrase why = other.containsKey(name) ? b.why() : a.why();
        found.add(new Difference(kind, name, a.amount(), b.amount(), why));
      }
    }
    found.sort((a, b) -> Double.compare(Math.abs(b.change()), Math.abs(a.change())));
    differences.addAll(found);
  }

  private static Map<String, Line> lines(Kind kind, Estimate estimate) {
    Map<String, Line> lines = new LinkedHashMap<>();
    switch (kind) {
      case HOURS -> {
        for (OperationLine line : estimate.hours().lines()) {
          put(lines, line.operation().title(), line.hours().mean(), line.why());
        }
      }
      case WELD -> {
        for (WeldSeam seam : estimate.plan().welds()) {
          double amount = seam.lengthMm() > 0 ? seam.totalLengthMm() : seam.count();
          put(lines, seam.name(), amount, seam.why());
        }
      }
      case PLATE -> {
        for (PlateNeed need : estimate.plan().plates()) {
          double areaMm2 = need.plate().outline().areaMm2() * need.quantity();
          put(lines, need.plate().name(), areaMm2, need.why());
        }
      }
      case TUBE -> {
        for (TubeNeed need : estimate.plan().tubes()) {
          put(lines, need.name(), need.cutLengthMm() * need.quantity(), need.why());
        }
      }
      case PART -> {
        for (PartLine part : estimate.materials().parts()) {
          put(lines, part.item().title(), part.quantity(), part.why());
        }
      }
    }
    return lines;
  }

  private static void put(Map<String, Line> lines, String name, double amount, Phrase why) {
    lines.merge(name, new Line(amount, why), (a, b) -> new Line(a.amount() + b.amount(), a.why()));
  }

  private record Line(double amount, Phrase why) {
    static final Line NONE = new Line(0, Phrase.NONE);
  }
}

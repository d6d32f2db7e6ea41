package trammel.planning.drawings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Reads the few entities a cutting table reads, knowing nothing of how they were written. */
final class DxfReader {
  /** One entity: its kind and its group codes. */
  record Entity(String kind, Map<Integer, String> groups) {
    double number(int code) {
      return Double.parseDouble(groups.get(code));
    }

    String layer() {
      return groups.get(8);
    }

    double[] end(boolean last) {
      if (kind.equals("LINE")) {
        return new double[] {number(last ? 11 : 10), number(last ? 21 : 20)};
      }
      double angle = Math.toRadians(number(last ? 51 : 50));
      return new double[] {
        number(10) + number(40) * Math.cos(angle), number(20) + number(40) * Math.sin(angle)
      };
    }

    /** Area swept about the origin when travelled from first to last end. */
    double sweptArea() {
      double[] a = end(false);
      double[] b = end(true);
      double chord = (a[0] * b[1] - b[0] * a[1]) / 2.0;
      if (kind.equals("LINE")) {
        return chord;
      }
      double turn = Math.toRadians(number(51) - number(50));
      double sweep = turn > 0.0 ? turn : turn + 2.0 * Math.PI;
      return chord + number(40) * number(40) * (sweep - Math.sin(sweep)) / 2.0;
    }
  }

  private DxfReader() {}

  static List<Entity> entities(String text) {
    String[] lines = text.split("\n");
    List<Entity> entities = new ArrayList<>();
    boolean inEntities = false;
    Map<Integer, String> groups = null;
    for (int i = 0; i + 1 < lines.length; i += 2) {
      int code = Integer.parseInt(lines[i].trim());
      String value = lines[i + 1];
      if (code == 2 && value.equals("ENTITIES")) {
        inEntities = true;
      } else if (inEntities && code == 0) {
        if (value.equals("ENDSEC")) {
          break;
        }
        groups = new HashMap<>();
        entities.add(new Entity(value, groups));
      } else if (groups != null) {
        groups.put(code, value);
      }
    }
    return entities;
  }

  /**
   * Area within the closed chains of lines, arcs and circles on a layer.
   *
   * @throws AssertionError when an end is left over
   */
  static double closedArea(List<Entity> entities, String layer, double jointMm) {
    List<Entity> left = new ArrayList<>();
    double area = 0.0;
    for (Entity entity : entities) {
      if (entity.layer().equals(layer) && entity.kind().equals("CIRCLE")) {
        area += Math.PI * entity.number(40) * entity.number(40);
      } else if (entity.layer().equals(layer)) {
        left.add(entity);
      }
    }
    while (!left.isEmpty()) {
      Entity first = left.remove(0);
      double[] start = first.end(false);
      double[] pen = first.end(true);
      double sum = first.sweptArea();
      while (Math.hypot(pen[0] - start[0], pen[1] - start[1]) > jointMm) {
        Entity next = null;
        for (Entity candidate : left) {
          for (boolean back : new boolean[] {false, true}) {
            double[] near = candidate.end(back);
            if (next == null && Math.hypot(pen[0] - near[0], pen[1] - near[1]) <= jointMm) {
              next = candidate;
              sum += back ? -candidate.sweptArea() : candidate.sweptArea();
              pen = candidate.end(!back);
            }
          }
        }
        if (next == null) {
          throw new AssertionError("path is open at " + pen[0] + ", " + pen[1]);
        }
        left.remove(next);
      }
      area += Math.abs(sum);
    }
    return area;
  }
}

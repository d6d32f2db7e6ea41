package trammel.bin;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import trammel.assembly.Assembly;
import trammel.assembly.Mesh;
import trammel.assembly.PartKind;
import trammel.assembly.PlacedPart;
import trammel.engine.geometry.Point3;

/**
 * The lines of the arrangement against rays through the finished vehicle: where an edge is drawn
 * strong, an edge of something that is added lies there and nothing stands before it; where one is
 * dashed, something does.
 */
final class DrawnEdges {
  private static final Set<String> SOLID =
      Set.of("left rail", "right rail", "axle tube", "axle's centre housing", "propeller shaft");

  /** Lines are joined end to end within so much of the paper (mm). */
  private static final double JOINED_MM = 0.08;

  /** As near to a surface as this, a ray tells nothing (mm). */
  private static final double GRAZING_MM = 1.5;

  private static final String NUMBER = "([-.0-9]+)";
  private static final Pattern DATUM =
      Pattern.compile(
          "<line x1=\""
              + NUMBER
              + "\" y1=\""
              + NUMBER
              + "\" x2=\""
              + NUMBER
              + "\" y2=\""
              + NUMBER
              + "\" stroke=\"#a8331c\"");
  private static final Pattern STROKE =
      Pattern.compile(
          "<polyline points=\"([^\"]*)\" fill=\"none\" stroke=\"black\""
              + " stroke-width=\"([.0-9]+)\"( stroke-dasharray=\"1.4 0.7\")?/>");

  private final Assembly assembly;
  private final String svg;
  private final List<View> views = new ArrayList<>();
  private final List<Piece> pieces = new ArrayList<>();

  /** From where, and where the vehicle's origin lies on the paper. */
  private record View(String from, double originX, double originY, double[] box, double mmEach) {
    boolean holds(double x, double y) {
      return x >= box[0] && x <= box[2] && y >= box[1] && y <= box[3];
    }

    /** Right, up and towards the eye (mm of the vehicle), from vehicle axes. */
    double[] see(Point3 point) {
      return switch (from) {
        case "side" -> new double[] {-point.xMm(), point.zMm(), point.yMm()};
        case "above" -> new double[] {-point.xMm(), -point.yMm(), point.zMm()};
        default -> new double[] {-point.yMm(), point.zMm(), -point.xMm()};
      };
    }
  }

  private record Piece(double fromX, double fromY, double toX, double toY, boolean dashed) {}

  DrawnEdges(Assembly assembly, String svg) {
    this.assembly = assembly;
    this.svg = svg;
    readViews();
    readPieces();
  }

  private void readViews() {
    Matcher scale = Pattern.compile(">1 : ([0-9]+)<").matcher(svg);
    if (!scale.find()) {
      throw new AssertionError("no scale on the sheet");
    }
    double mmEach = Double.parseDouble(scale.group(1));
    Matcher datum = DATUM.matcher(svg);
    for (String from : List.of("side", "above", "behind")) {
      double[] upright = next(datum);
      double[] level = next(datum);
      double[] box = {level[0], upright[1], level[2], upright[3]};
      views.add(new View(from, upright[0], level[1], box, mmEach));
    }
  }

  private static double[] next(Matcher datum) {
    if (!datum.find()) {
      throw new AssertionError("a view has no datums");
    }
    double[] line = new double[4];
    for (int i = 0; i < 4; i++) {
      line[i] = Double.parseDouble(datum.group(i + 1));
    }
    return line;
  }

  private void readPieces() {
    Matcher stroke = STROKE.matcher(svg);
    while (stroke.find()) {
      boolean dashed = stroke.group(3) != null;
      if (!dashed && !stroke.group(2).equals("0.3")) {
        continue;
      }
      String[] points = stroke.group(1).split(" ");
      for (int i = 1; i < points.length; i++) {
        String[] from = points[i - 1].split(",");
        String[] to = points[i].split(",");
        pieces.add(
            new Piece(
                Double.parseDouble(from[0]),
                Double.parseDouble(from[1]),
                Double.parseDouble(to[0]),
                Double.parseDouble(to[1]),
                dashed));
      }
    }
  }

  /** So many random points of the lines, and what is wrong at them. */
  List<String> wrong(int count) {
    Random random = new Random(17);
    List<String> wrong = new ArrayList<>();
    for (View view : views) {
      Sight sight = new Sight(assembly, view);
      List<Piece> here =
          pieces.stream()
              .filter(
                  piece -> view.holds((piece.fromX + piece.toX) / 2, (piece.fromY + piece.toY) / 2))
              .filter(piece -> Math.hypot(piece.toX - piece.fromX, piece.toY - piece.fromY) > 0.3)
              .toList();
      for (int i = 0; i < (count + 2) / views.size(); i++) {
        Piece piece = here.get(random.nextInt(here.size()));
        double share = 0.1 + 0.8 * random.nextDouble();
        double x = piece.fromX + share * (piece.toX - piece.fromX);
        double y = piece.fromY + share * (piece.toY - piece.fromY);
        double seenX = (x - view.originX) * view.mmEach;
        double seenY = (view.originY - y) * view.mmEach;
        String fault = sight.fault(seenX, seenY, piece.dashed);
        if (!fault.isEmpty()) {
          wrong.add(view.from + " at " + seenX + ", " + seenY + ": " + fault);
        }
      }
    }
    return wrong;
  }

  /** What one eye meets: triangles, and the edges of what is added. */
  private static final class Sight {
    private final List<double[][]> solid = new ArrayList<>();
    private final List<double[][]> edges = new ArrayList<>();
    private final double nearMm;

    Sight(Assembly assembly, View view) {
      nearMm = JOINED_MM * view.mmEach;
      for (PlacedPart part : assembly.parts()) {
        boolean vehicle = part.kind() == PartKind.VEHICLE;
        if (part.kind() == PartKind.TOOL || vehicle && !SOLID.contains(part.id())) {
          continue;
        }
        Mesh mesh = part.solid().mesh().placed(part.place());
        List<double[]> corners = mesh.corners().stream().map(view::see).toList();
        for (Mesh.Face face : mesh.faces()) {
          double[][] triangle = {
            corners.get(face.a()), corners.get(face.b()), corners.get(face.c())
          };
          solid.add(triangle);
          if (!vehicle) {
            for (int i = 0; i < 3; i++) {
              edges.add(new double[][] {triangle[i], triangle[(i + 1) % 3]});
            }
          }
        }
      }
    }

    String fault(double x, double y, boolean dashed) {
      boolean some = false;
      for (double[][] edge : edges) {
        double dx = edge[1][0] - edge[0][0];
        double dy = edge[1][1] - edge[0][1];
        double long2 = dx * dx + dy * dy;
        if (long2 < 1e-6) {
          continue;
        }
        double share = ((x - edge[0][0]) * dx + (y - edge[0][1]) * dy) / long2;
        double off = Math.hypot(edge[0][0] + share * dx - x, edge[0][1] + share * dy - y);
        if (share < -0.02 || share > 1.02 || off > nearMm) {
          continue;
        }
        some = true;
        double depth = edge[0][2] + share * (edge[1][2] - edge[0][2]);
        if (dashed ? isCoveredSomewhere(x, y, depth) : !isCoveredAllRound(x, y, depth)) {
          return "";
        }
      }
      if (!some) {
        return "no edge is there";
      }
      return dashed
          ? "dashed, and nothing stands before it"
          : "strong, and it stands behind something";
    }

    private boolean isCoveredAllRound(double x, double y, double depth) {
      return covered(x, y, depth, GRAZING_MM)
          && covered(x + GRAZING_MM, y, depth, GRAZING_MM)
          && covered(x - GRAZING_MM, y, depth, GRAZING_MM)
          && covered(x, y + GRAZING_MM, depth, GRAZING_MM)
          && covered(x, y - GRAZING_MM, depth, GRAZING_MM);
    }

    private boolean isCoveredSomewhere(double x, double y, double depth) {
      return covered(x, y, depth, 0.05)
          || covered(x + GRAZING_MM, y, depth, 0.05)
          || covered(x - GRAZING_MM, y, depth, 0.05)
          || covered(x, y + GRAZING_MM, depth, 0.05)
          || covered(x, y - GRAZING_MM, depth, 0.05);
    }

    private boolean covered(double x, double y, double depth, double beforeMm) {
      for (double[][] t : solid) {
        double area = cross(t[0], t[1], t[2][0], t[2][1]);
        if (Math.abs(area) < 1e-6) {
          continue;
        }
        double a = cross(t[1], t[2], x, y) / area;
        double b = cross(t[2], t[0], x, y) / area;
        double c = 1 - a - b;
        if (a >= 0
            && b >= 0
            && c >= 0
            && a * t[0][2] + b * t[1][2] + c * t[2][2] > depth + beforeMm) {
          return true;
        }
      }
      return false;
    }

    private static double cross(double[] from, double[] to, double x, double y) {
      return (to[0] - from[0]) * (y - from[1]) - (to[1] - from[1]) * (x - from[0]);
    }
  }
}

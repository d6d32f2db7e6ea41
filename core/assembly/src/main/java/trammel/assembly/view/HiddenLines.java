package trammel.assembly.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which edges of bodies an eye sees. Each edge is cut where a facet begins or ends to stand in
 * front of it; where it lies within a facet's outline and behind its plane it is hidden
 * (quantitative invisibility, Appel, The notion of quantitative invisibility and the machine
 * rendering of solids, 1967, taken facet by facet).
 */
public final class HiddenLines {
  /** Pieces shorter than this in the picture are not drawn (mm of the vehicle). */
  private static final double LEAST_MM = 0.3;

  private final FacetGrid grid;
  private final boolean seenOnly;
  private final List<SeenLine> lines = new ArrayList<>();

  /** Part of an edge, as shares of its length. */
  private record Span(double from, double to) {}

  private HiddenLines(FacetGrid grid, boolean seenOnly) {
    this.grid = grid;
    this.seenOnly = seenOnly;
  }

  /**
   * The edges of bodies as lines in a picture. A body through which one can see hides nothing and
   * is hidden by nothing; only its edges that face the eye are there.
   */
  public static List<SeenLine> of(List<Body> bodies, Eye eye) {
    return of(bodies, eye, false);
  }

  /** Of the edges of bodies only what the eye sees, for a picture that shows nothing else. */
  public static List<SeenLine> seen(List<Body> bodies, Eye eye) {
    return of(bodies, eye, true);
  }

  private static List<SeenLine> of(List<Body> bodies, Eye eye, boolean seenOnly) {
    List<Edges> edges = bodies.stream().map(body -> new Edges(body.mesh(), eye)).toList();
    List<Facet> hiding = new ArrayList<>();
    for (int i = 0; i < bodies.size(); i++) {
      if (bodies.get(i).hides()) {
        hiding.addAll(edges.get(i).facing());
      }
    }
    HiddenLines picture = new HiddenLines(new FacetGrid(hiding), seenOnly);
    for (int i = 0; i < bodies.size(); i++) {
      for (Edges.Edge edge : edges.get(i).drawn()) {
        picture.add(bodies.get(i), edge);
      }
    }
    return Overdrawn.without(picture.lines);
  }

  private void add(Body body, Edges.Edge edge) {
    if (seenOnly && edge.behind()) {
      return;
    }
    SeenLine whole =
        new SeenLine(
            body.id(),
            edge.from().xMm(),
            edge.from().yMm(),
            edge.to().xMm(),
            edge.to().yMm(),
            edge.behind());
    double lengthMm = whole.lengthMm();
    if (lengthMm < LEAST_MM / 10) {
      return;
    }
    if (edge.behind() || !body.hides()) {
      if (body.hides() || !edge.behind()) {
        lines.add(whole);
      }
      return;
    }
    double seenTo = 0;
    for (Span span : merged(hiddenSpans(edge))) {
      addPiece(whole, seenTo, span.from, false, lengthMm);
      addPiece(whole, span.from, span.to, true, lengthMm);
      seenTo = span.to;
    }
    addPiece(whole, seenTo, 1, false, lengthMm);
  }

  /** A whole short edge, as of a rounding's facet, is drawn; a short rest of a long one is not. */
  private void addPiece(SeenLine whole, double from, double to, boolean hidden, double lengthMm) {
    if (hidden && seenOnly) {
      return;
    }
    if (to - from > Math.min(0.5, LEAST_MM / lengthMm)) {
      lines.add(whole.piece(from, to, hidden));
    }
  }

  private List<Span> hiddenSpans(Edges.Edge edge) {
    List<Span> spans = new ArrayList<>();
    grid.along(
        edge.from(),
        edge.to(),
        facet -> {
          double[] span = {0, 1};
          facet.keepHidden(edge.from(), edge.to(), span);
          if (span[1] > span[0]) {
            spans.add(new Span(span[0], span[1]));
          }
          boolean hidesItWhole = span[0] <= 0 && span[1] >= 1;
          return !hidesItWhole;
        });
    return spans;
  }

  private static List<Span> merged(List<Span> spans) {
    spans.sort(Comparator.comparingDouble(Span::from));
    List<Span> merged = new ArrayList<>();
    for (Span span : spans) {
      int last = merged.size() - 1;
      if (last >= 0 && span.from <= merged.get(last).to) {
        merged.set(last, new Span(merged.get(last).from, Math.max(span.to, merged.get(last).to)));
      } else {
        merged.add(span);
      }
    }
    return merged;
  }
}

package trammel.cutting.outlines;

import java.util.ArrayList;
import java.util.List;

/**
 * How deep any two shapes lie in each other. Fields are made when first asked for, one for each two
 * forms and each turn between them; two threads may share a table.
 */
final class NoFitTable {
  private static final double SAME_TURN_DEG = 1e-9;

  /**
   * Outlines may come closer than the kerf by this part of the largest sheet: what fits exactly, as
   * two plates of half its width, would not be found to fit otherwise.
   */
  private static final double TOUCH = 3e-10;

  /** Least distance between outlines, mm. */
  final double clearance;

  private final OutlineShape[] shapes;
  private final int[] formOf;
  private final double[] cos;
  private final double[] sin;

  /** Per two shapes, the one of the lower form first, the place of their field. */
  private final int[] fieldOf;

  /** Written without a lock: a field is complete once seen, and made twice it is the same. */
  private final NoFitField[] fields;

  /** Per field the two shapes that it was first numbered for. */
  private final List<int[]> firstPair = new ArrayList<>();

  /**
   * @param items the shapes of every item
   * @param kerfMm least distance between outlines, mm
   * @param sheetMm the longest side of any sheet, or the width of the strip, mm
   */
  NoFitTable(OutlineShape[][] items, double kerfMm, double sheetMm) {
    this.clearance = kerfMm - TOUCH * sheetMm;
    this.shapes = numbered(items);
    int n = shapes.length;
    this.formOf = new int[n];
    this.cos = new double[n];
    this.sin = new double[n];
    List<OutlineForm> forms = new ArrayList<>();
    for (int s = 0; s < n; s++) {
      int form = forms.indexOf(shapes[s].form);
      if (form < 0) {
        form = forms.size();
        forms.add(shapes[s].form);
      }
      formOf[s] = form;
      cos[s] = shapes[s].turn.cos;
      sin[s] = shapes[s].turn.sin;
    }
    this.fieldOf = new int[n * n];
    int[][] byForms = new int[forms.size() * forms.size()][0];
    for (int a = 0; a < n; a++) {
      for (int b = 0; b < n; b++) {
        if (formOf[a] <= formOf[b]) {
          fieldOf[a * n + b] = number(a, b, byForms, formOf[a] * forms.size() + formOf[b]);
        }
      }
    }
    this.fields = new NoFitField[firstPair.size()];
  }

  private static OutlineShape[] numbered(OutlineShape[][] items) {
    List<OutlineShape> all = new ArrayList<>();
    for (OutlineShape[] ways : items) {
      for (OutlineShape way : ways) {
        if (way.number == all.size()) {
          all.add(way);
        }
      }
    }
    return all.toArray(new OutlineShape[0]);
  }

  /** The number of the field for the turn between two shapes, a new one where none is the same. */
  private int number(int a, int b, int[][] byForms, int forms) {
    double turnDeg = between(a, b);
    for (int known : byForms[forms]) {
      int[] pair = firstPair.get(known);
      if (Math.abs(between(pair[0], pair[1]) - turnDeg) < SAME_TURN_DEG) {
        return known;
      }
    }
    int number = firstPair.size();
    firstPair.add(new int[] {a, b});
    int[] more = java.util.Arrays.copyOf(byForms[forms], byForms[forms].length + 1);
    more[more.length - 1] = number;
    byForms[forms] = more;
    return number;
  }

  private double between(int a, int b) {
    return OutlineTurn.withinFullTurn(shapes[b].turn.deg - shapes[a].turn.deg);
  }

  /**
   * How deep shape b lies in shape a.
   *
   * @param x x of b's origin less that of a
   * @param y the same in y
   * @return mm; 0 when they keep their clearance
   */
  double depth(int a, int b, double x, double y) {
    if (formOf[a] <= formOf[b]) {
      return field(a, b).at(cos[a] * x + sin[a] * y, cos[a] * y - sin[a] * x);
    }
    return field(b, a).at(-cos[b] * x - sin[b] * y, sin[b] * x - cos[b] * y);
  }

  private NoFitField field(int a, int b) {
    int number = fieldOf[a * formOf.length + b];
    NoFitField field = fields[number];
    return field == null ? made(number) : field;
  }

  private NoFitField made(int number) {
    int[] pair = firstPair.get(number);
    OutlineTurn turn = new OutlineTurn(between(pair[0], pair[1]));
    NoFitField field =
        new NoFitField(shapes[pair[0]].form.pieces, shapes[pair[1]].form.turned(turn), clearance);
    fields[number] = field;
    return field;
  }
}

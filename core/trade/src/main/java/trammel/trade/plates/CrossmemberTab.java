package trammel.trade.plates;

import java.util.ArrayList;
import java.util.List;
import trammel.trade.given.Dimension;

/**
 * A flat tab that bolts or welds a crossmember to a rail: a rectangle with rounded outer corners
 * and a grid of bolt holes. Axes: x along the welded base from its middle, y away from it.
 *
 * @param name what the shop calls it
 * @param thicknessMm plate thickness
 * @param widthMm length of the base
 * @param heightMm distance from the base to the far edge
 * @param cornerRadiusMm radius of the two far corners; 0 for sharp ones
 * @param holeDiameterMm bolt hole diameter
 * @param columns holes along the base
 * @param columnPitchMm distance between columns
 * @param rows holes away from the base
 * @param rowPitchMm distance between rows
 * @param firstRowMm distance of the first row from the base
 * @param rules metal about the holes
 */
public record CrossmemberTab(
    String name,
    double thicknessMm,
    double widthMm,
    double heightMm,
    double cornerRadiusMm,
    double holeDiameterMm,
    int columns,
    double columnPitchMm,
    int rows,
    double rowPitchMm,
    double firstRowMm,
    HoleRules rules)
    implements PlateShape {
  private static final int MOST_IN_LINE = 20;

  public CrossmemberTab {
    Dimension.text("tab name", name);
    Dimension.positiveMm("thickness of " + name, thicknessMm);
    Dimension.positiveMm("width of " + name, widthMm);
    Dimension.positiveMm("height of " + name, heightMm);
    Dimension.notNegativeMm("corner radius of " + name, cornerRadiusMm);
    Dimension.atMostMm(
        "corner radius of " + name,
        cornerRadiusMm,
        Math.min(widthMm / 2.0, heightMm),
        "Make the radius smaller or the tab larger.");
    Dimension.count("number of columns of " + name, columns, 0, MOST_IN_LINE);
    Dimension.count("number of rows of " + name, rows, 0, MOST_IN_LINE);
    draw(
        name,
        widthMm,
        heightMm,
        cornerRadiusMm,
        grid(holeDiameterMm, columns, columnPitchMm, rows, rowPitchMm, firstRowMm),
        rules);
  }

  @Override
  public Outline outline() {
    return draw(
        name,
        widthMm,
        heightMm,
        cornerRadiusMm,
        grid(holeDiameterMm, columns, columnPitchMm, rows, rowPitchMm, firstRowMm),
        rules);
  }

  private static List<Hole> grid(
      double holeMm,
      int columns,
      double columnPitchMm,
      int rows,
      double rowPitchMm,
      double firstMm) {
    List<Hole> holes = new ArrayList<>(columns * rows);
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        double xMm = (column - (columns - 1) / 2.0) * columnPitchMm;
        holes.add(new RoundHole(new Point2(xMm, firstMm + row * rowPitchMm), holeMm));
      }
    }
    return holes;
  }

  private static Outline draw(
      String name,
      double widthMm,
      double heightMm,
      double cornerMm,
      List<Hole> holes,
      HoleRules rules) {
    double half = widthMm / 2.0;
    List<Disc> discs =
        List.of(
            Disc.corner(new Point2(-half, 0.0)),
            Disc.corner(new Point2(half, 0.0)),
            new Disc(new Point2(half - cornerMm, heightMm - cornerMm), cornerMm),
            new Disc(new Point2(cornerMm - half, heightMm - cornerMm), cornerMm));
    return rules.check(name, new Outline(Belt.around(discs), holes));
  }
}

package trammel.cutting.sheets;

/**
 * Judges a sheet begun by filling it up quickly: what is then left out tells how good the beginning
 * was.
 *
 * <p>A beam search guided by quick ends (Bennell, Cabo and Martínez-Sykora, European Journal of
 * Operational Research 270 (2018), from memory).
 */
final class Lookahead {
  private final SheetModel model;
  private final int height;
  private final SkylineFill fill;
  private final Arrangement[] arrangements;
  private final int[] remaining;
  private final Layout end = new Layout();

  /**
   * @param height of the sheet, in steps
   * @param ends quick ends tried for each beginning, from 1 to {@link Arrangement#MEASURES}
   */
  Lookahead(SheetModel model, int height, int ends) {
    this.model = model;
    this.height = height;
    this.fill = new SkylineFill(model);
    this.remaining = new int[model.types()];
    this.arrangements = new Arrangement[ends];
    for (int i = 0; i < ends; i++) {
      arrangements[i] = Arrangement.sorted(model, i);
    }
  }

  /** Quick ends tried for each beginning. */
  int ends() {
    return arrangements.length;
  }

  /**
   * Least area left out; 0 when one end places all parts, see {@link #end()}.
   *
   * @param skyline for each gap its left end, its height and its width
   * @param left parts of each type still to be placed
   * @param area their area
   */
  long leftOut(int[][] skyline, int[] left, long area) {
    long spare = openArea(skyline) - area;
    long least = area;
    for (int i = 0; i < arrangements.length && least > 0; i++) {
      System.arraycopy(left, 0, remaining, 0, left.length);
      long added = fill.fillOn(skyline, height, arrangements[i], remaining, end, spare + least);
      least = Math.min(least, area - added);
    }
    return least;
  }

  private long openArea(int[][] skyline) {
    long open = 0;
    for (int g = 0; g < skyline[0].length; g++) {
      open += (long) (height - skyline[1][g]) * skyline[2][g];
    }
    return open;
  }

  /** The parts of the last end tried. */
  Layout end() {
    return end;
  }
}

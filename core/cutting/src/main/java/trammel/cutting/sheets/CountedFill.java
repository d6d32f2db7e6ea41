package trammel.cutting.sheets;

import trammel.cutting.internal.Deadline;

/** Fills sheets as another does, and counts the effort. */
final class CountedFill implements SheetFill {
  private static final long STEPS_PER_FILL = 100;
  private static final long STEPS_PER_PART = 20;
  private static final long STEPS_PER_LOOK = 2;

  private final SheetFill fill;
  private final int types;
  private final Deadline deadline;

  CountedFill(SheetFill fill, SheetModel model, Deadline deadline) {
    this.fill = fill;
    this.types = model.types();
    this.deadline = deadline;
  }

  @Override
  public long fill(
      int sheetWidth, int sheetHeight, Arrangement arrangement, int[] remaining, Layout layout) {
    long area = fill.fill(sheetWidth, sheetHeight, arrangement, remaining, layout);
    long parts = layout.parts + 1L;
    deadline.spend(STEPS_PER_FILL + parts * (STEPS_PER_PART + STEPS_PER_LOOK * types));
    return area;
  }
}

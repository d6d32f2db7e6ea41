package trammel.cutting.sheets;

/** Fills one sheet with parts, following an arrangement. */
interface SheetFill {
  /**
   * @param remaining parts of each type still to be placed; lowered by what is placed
   * @param layout receives the places
   * @return area placed
   */
  long fill(
      int sheetWidth, int sheetHeight, Arrangement arrangement, int[] remaining, Layout layout);
}

package trammel.cutting.sheets;

/**
 * A left-over rectangle worth keeping.
 *
 * @param name unique within the plan, from the stock and the number of the sheet
 * @param stockId the sheet it was cut from
 * @param xMm its left edge on that sheet, mm
 * @param yMm its lower edge on that sheet, mm
 * @param widthMm side along x, mm
 * @param heightMm side along y, mm
 */
public record SheetOffcut(
    String name, String stockId, double xMm, double yMm, double widthMm, double heightMm) {}

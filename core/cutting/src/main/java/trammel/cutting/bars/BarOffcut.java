package trammel.cutting.bars;

/**
 * A left-over length worth keeping.
 *
 * @param name unique within the plan, from the stock and the number of the bar
 * @param stockId the stock it was cut from
 * @param lengthMm its length, mm
 */
public record BarOffcut(String name, String stockId, double lengthMm) {}

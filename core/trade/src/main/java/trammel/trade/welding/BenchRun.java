package trammel.trade.welding;

/**
 * A weld that is somewhere on the bench.
 *
 * @param lengthMm its length, mm
 */
record BenchRun(double lengthMm) implements WeldRun {}

package trammel.engine.clearance;

/**
 * What the grid tells of a pair: where the gap is least, and which poses may have a lower gap near
 * them.
 *
 * @param pose index of the pose with the least gap
 * @param gapMm that gap
 * @param reachMm how much lower the gap may get between neighbouring poses
 * @param starts poses lower than all around them and within reach of the least, lowest first
 * @param startGapsMm their gaps
 */
record GridLeast(int pose, double gapMm, double reachMm, int[] starts, double[] startGapsMm) {}

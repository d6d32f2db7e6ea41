package trammel.engine.clearance;

/**
 * What the grid tells of a pair: where the gap is least, and which poses may have a lower gap near
 * them.
 *
 * @param pose index of the pose with the least gap
 * @param gapMm that gap
 * @param reachMm how much lower the gap may get between neighbouring poses
 * @param close whether the gap may come under the limit below which it is refined
 * @param starts if close, poses lower than all around them and within reach of the least, lowest
 *     first
 */
record GridLeast(int pose, double gapMm, double reachMm, boolean close, int[] starts) {}

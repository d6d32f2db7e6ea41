/**
 * What the cutters share: effort and time, totals that stock can cost, checks of quantities.
 * Nothing outside {@code trammel.cutting} may use it.
 */
package trammel.cutting.internal;

/**
 * Where the bars of a linkage can go: their options, the room across the vehicle, the room about
 * the axle tube. Units: mm, rad.
 */
package trammel.planning.bars;

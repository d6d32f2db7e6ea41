/**
 * Steel, sections, columns, threads, bolts, pinned joints, welds and rod ends: screening estimates
 * of strength, for comparison and not for certification. Units: mm, N, kg, rad, MPa, Nmm.
 */
package trammel.engine.strength;

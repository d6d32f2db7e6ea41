/**
 * The driveshaft and its universal joints. Units: mm, N, kg, rad; shaft speeds in revolutions a
 * minute, as every table of the trade has them, with {@code Rpm} in the name.
 */
package trammel.engine.driveline;

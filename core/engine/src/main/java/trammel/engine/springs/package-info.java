/**
 * Coil and air springs on a rigid axle: rates, loads, ride frequency, roll stiffness, isolation.
 * Units: mm, N, kg, rad, N/mm, MPa, Hz.
 */
package trammel.engine.springs;

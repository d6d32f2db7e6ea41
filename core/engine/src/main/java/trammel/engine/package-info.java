/** Geometry, motion and strength of a rigid axle on links. Units: mm, N, kg, rad. */
package trammel.engine;

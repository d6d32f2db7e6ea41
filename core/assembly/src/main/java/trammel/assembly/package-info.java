/**
 * The placed model of a finished job: solids with their places in vehicle axes, what carries them,
 * weld seams as paths in space, and what holds what. It knows no bar, no spring and no catalog.
 * Units: mm, kg, rad.
 */
package trammel.assembly;

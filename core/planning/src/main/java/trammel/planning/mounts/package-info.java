/**
 * Where springs and shocks are mounted: the room round the axle, the choice of shock and spring for
 * the travel, and the crossmembers, tabs, arms and seats that carry them. Units: mm, N, rad.
 */
package trammel.planning.mounts;

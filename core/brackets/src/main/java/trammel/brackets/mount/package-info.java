/**
 * Where springs and shocks are mounted: the room round the axle, the choice of shock and spring for
 * the travel, and the crossmembers and tabs that carry them. Units: mm, N, rad.
 */
package trammel.brackets.mount;

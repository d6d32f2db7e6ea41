/**
 * The work that the vehicle itself asks for, whatever its bars and springs: the stages of every
 * job, the notch, and what has to be moved out of the way. Units: mm, N, rad.
 */
package trammel.planning.vehicle;

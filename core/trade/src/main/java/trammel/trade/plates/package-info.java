/**
 * Flat steel parts: exact outlines of lines and arcs, the rules their holes must keep, and the
 * bracket, gusset, boxing and notch plates of a rear suspension. Lengths in mm, angles in rad, each
 * plate in its own axes.
 */
package trammel.trade.plates;

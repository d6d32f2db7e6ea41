/**
 * Tubes of links and lateral bars: cut lengths from the joint centres, end preparations, copes,
 * mitres and bends. Lengths in mm, angles in rad.
 */
package trammel.trade.tubes;

/**
 * The work of building bars and fixing them to rails and axle: tubes cut to length, brackets drawn
 * from where the joints sit, boxing plates from where the brackets sit, welds from the outlines.
 * Units: mm.
 */
package trammel.planning.fabrication;

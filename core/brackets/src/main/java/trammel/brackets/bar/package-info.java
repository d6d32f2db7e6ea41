/**
 * Bars: where they can go across the vehicle, on the rails and about the axle tube, what they are
 * made of, and how each is made. Units: mm, rad.
 */
package trammel.brackets.bar;

/**
 * The toolkit of bracket parts: what a linkage's or a spring's work is composed from. Nothing here
 * knows which bars make a linkage, or what springs a vehicle.
 */
package trammel.brackets;

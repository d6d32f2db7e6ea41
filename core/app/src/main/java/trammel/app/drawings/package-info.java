/** Drawings on paper: the vehicle, curves, nests and true-scale templates. */
package trammel.app.drawings;

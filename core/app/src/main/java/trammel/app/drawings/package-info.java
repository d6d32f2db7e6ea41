/** Drawings on paper, written as SVG. */
package trammel.app.drawings;

/** Files a cutting table can read: plate outlines as DXF and SVG at true size, mm. */
package trammel.planning.drawings;

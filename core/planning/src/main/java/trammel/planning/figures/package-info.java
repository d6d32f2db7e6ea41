/** The bench figures: every single formula of the tool by name, as data. */
package trammel.planning.figures;

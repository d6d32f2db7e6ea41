/** The fit-up sheet as a form to fill in, and the readings that come back on it. */
package trammel.app.fitup;

/** What the commands print for machines: the unit in every name, engine units throughout. */
package trammel.app.json;

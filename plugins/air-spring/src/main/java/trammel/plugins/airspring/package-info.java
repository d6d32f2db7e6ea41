/** Air springs with separate shocks. */
package trammel.plugins.airspring;

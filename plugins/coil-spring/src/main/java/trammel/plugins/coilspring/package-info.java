/** Coil springs on shocks. */
package trammel.plugins.coilspring;

/** Points and vectors in vehicle axes (ISO 8855: x forward, y left, z up), millimetres. */
package trammel.engine.geometry;

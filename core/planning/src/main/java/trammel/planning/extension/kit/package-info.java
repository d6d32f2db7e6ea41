/**
 * Test kit for anyone who writes a linkage, a spring mount or an addition: give it the plugin, a
 * catalog and a vehicle, and it checks what every plugin must keep to. What does not hold is thrown
 * as an {@link java.lang.AssertionError} that says in a plain sentence what is wrong.
 */
package trammel.planning.extension.kit;

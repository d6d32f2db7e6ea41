/** Limiting straps, which end the droop before a shock does. */
package trammel.plugins.limitingstraps;

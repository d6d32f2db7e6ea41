/**
 * Seeded draws for tests. A property is a test that states what holds for every input: it is marked
 * with {@link trammel.testsupport.Seeds} and takes its inputs from a {@link
 * trammel.testsupport.Draw}. The same seed always draws the same values, so that a failure names
 * its seed and that seed can be run alone.
 */
package trammel.testsupport;

/**
 * Random but plausible vehicles as complete job files. The ranges and where they come from are in
 * {@code docs/plausible-vehicles.md}. They are written as text, so that this module knows no other.
 */
package trammel.testsupport.vehicle;

/**
 * Searches for layouts of a job that pass every check, the cheapest first, and says what excludes
 * what where there is none. Knows no plugin: what can be turned is read off the options that
 * linkages and springs declare.
 */
package trammel.planning.arrange;

/**
 * Files as trees of located nodes, and everything that is wrong with them as problems. JSON and
 * YAML are read to the same tree; what cannot be read in one way only is refused.
 */
package trammel.reading.tree;

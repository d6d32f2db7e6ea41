/** Variants of a job side by side, and the lines that make the difference. */
package trammel.planning.compare;

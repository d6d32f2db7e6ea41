/**
 * Stock on hand: what is on the rack, how it is written in a file, and what is taken and put back.
 */
package trammel.planning.rack;

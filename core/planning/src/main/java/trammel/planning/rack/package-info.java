/** What the shop has on its rack and in its bins. */
package trammel.planning.rack;

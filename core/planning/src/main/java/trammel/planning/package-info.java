/** From a finished layout to parts, steel, welds, hours, money and orders. */
package trammel.planning;

/** From weld seams to weld metal, filler, gas and hours at the torch. */
package trammel.trade.welding;

/**
 * Steel as the shop buys and works it: stock forms with their weight and shop name, sheet gauges,
 * saw, drill, tap and plasma times, bends.
 */
package trammel.trade.steel;

/** From costs and hours to a price, tax, deposit and balance, exact to the smallest coin. */
package trammel.trade.money;

/** Hours: three-point operations, factors, their sum with correlation, learning curves. */
package trammel.trade.labour;

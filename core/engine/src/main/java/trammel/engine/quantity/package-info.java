/** What every calculation of the engine shares: checked inputs and gravity. */
package trammel.engine.quantity;

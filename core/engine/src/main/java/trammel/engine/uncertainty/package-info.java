/**
 * How sure the checks of a layout are: what is only measured or built to a tolerance is varied, and
 * every check is made again.
 */
package trammel.engine.uncertainty;

/** From the work that a layout asks for to weights, hours and the price of the job. */
package trammel.planning.estimate;

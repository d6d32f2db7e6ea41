/**
 * Four links and a Watt's linkage: a rocker on a pin behind the axle, with a link from each of its
 * ends to the frame.
 */
package trammel.plugins.wattslinkage;

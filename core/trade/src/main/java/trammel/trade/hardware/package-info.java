/** Threads, bolt lengths from the grip, and tightening torques. Units: mm, N, MPa, Nmm. */
package trammel.trade.hardware;

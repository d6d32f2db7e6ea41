/** Closing a job: what it really took, and the shop's history of closed jobs. */
package trammel.app.closing;

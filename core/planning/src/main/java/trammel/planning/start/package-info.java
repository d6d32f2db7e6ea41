/** Starting a job: what to measure and ask, and the job file that comes of the answers. */
package trammel.planning.start;

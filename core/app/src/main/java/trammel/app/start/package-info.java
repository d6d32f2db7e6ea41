/** Asking for a job step by step, or taking a filled measuring sheet. */
package trammel.app.start;

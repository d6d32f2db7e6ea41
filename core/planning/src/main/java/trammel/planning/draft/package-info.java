/** From the measurements and choices of a job to its layout, ready to be judged and planned. */
package trammel.planning.draft;

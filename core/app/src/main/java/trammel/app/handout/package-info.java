/** Folders of files that a job hands out to saw, cutting table, floor and customer. */
package trammel.app.handout;

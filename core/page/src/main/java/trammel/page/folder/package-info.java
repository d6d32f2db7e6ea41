/** The folder of jobs: reading, changing field by field, taking back. */
package trammel.page.folder;

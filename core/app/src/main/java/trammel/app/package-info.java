/** The commands and the documents they write. */
package trammel.app;

/** The page: the command, and who answers what. */
package trammel.page;

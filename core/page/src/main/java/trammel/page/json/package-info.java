/** What the page is told, under the same names as the commands print with {@code --json}. */
package trammel.page.json;

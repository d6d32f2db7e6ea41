/** Works jobs out as the commands do, and keeps what was worked out. */
package trammel.page.bench;

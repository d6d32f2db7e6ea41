/** Writing files whole or not at all, with names and cells that harm nothing. */
package trammel.app.files;

/** The words of {@code book}, each with what it does. */
package trammel.app.commands.book;

package trammel.app.commands.book;

/**
 * A job that was named on the command line.
 *
 * @param number its number
 * @param shop the shop whose it is
 */
record NamedJob(String number, BookShop shop) {}

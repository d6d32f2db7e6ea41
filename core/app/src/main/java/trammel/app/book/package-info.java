/** The course of jobs from quote to paid, kept in the shop's ledger. */
package trammel.app.book;

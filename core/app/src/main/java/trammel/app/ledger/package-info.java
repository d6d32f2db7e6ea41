/** The shop's ledger as the commands use it: where it is, what was before it, its tables as CSV. */
package trammel.app.ledger;

/** The shop's ledger: one SQLite file of closed jobs and stock on hand. The only SQL. */
package trammel.ledger;

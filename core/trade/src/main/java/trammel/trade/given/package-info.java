/** What a record says when it refuses a value: what was given, what is allowed, what to do. */
package trammel.trade.given;

/** The shop's own figures as tables: terms, suppliers, operations, limits, prices and stock. */
package trammel.page.shop;

/** Suppliers' price lists: read, matched to the catalog, written into the shop's own. */
package trammel.app.prices;

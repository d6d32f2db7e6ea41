/** Documents for customer and floor: one template each, as HTML and as PDF. */
package trammel.app.documents;

/** What is handed to the customer and to the floor, as HTML and PDF from one template each. */
package trammel.app.documents;

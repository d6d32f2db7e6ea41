/** The curves of a layout through heave and roll: worked out, tabulated, drawn. */
package trammel.app.travel;

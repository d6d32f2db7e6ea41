/** What the commands print on a screen: the number first, then the limit, then what to change. */
package trammel.app.text;

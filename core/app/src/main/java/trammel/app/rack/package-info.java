/** The shop's stock on hand as a file that is read and written safely. */
package trammel.app.rack;

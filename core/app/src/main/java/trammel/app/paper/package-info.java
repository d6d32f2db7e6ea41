/** Paper and pictures made by libraries: letters, PDF sheets and PNG of one drawing. */
package trammel.app.paper;

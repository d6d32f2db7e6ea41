/** The bare list formats of cutting: reading, checking, solving, writing. */
package trammel.app.cutfile;

/** The file format of bare linkages and their motion: reading, checking, solving, writing. */
package trammel.app.motionfile;

/** Brings a job from its file to its layout and its estimate with what is installed. */
package trammel.app.desk;

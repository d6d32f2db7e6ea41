/** Work side by side on the cores of one machine. */
package trammel.cutting.background;

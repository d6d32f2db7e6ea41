/** Cutting lists by published recipes, and the report of how well they are cut. */
package trammel.cutting.validation;

/** Nesting true outlines: a bracket in another's hollow, on sheets and on strips. */
package trammel.cutting.outlines;

/** Cutting plates: rectangular parts out of sheets, drops and strips, with margin and kerf. */
package trammel.cutting.sheets;

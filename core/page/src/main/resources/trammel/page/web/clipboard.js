// @ts-check
/** What a spreadsheet puts on the clipboard. */

/**
 * Cells as a spreadsheet puts them on the clipboard: lines of cells parted by tabs, a cell with a
 * tab, a line break or a quote in it in quotes.
 * @param {string} text
 */
export function pasted(text) {
  /** @type {string[][]} */
  const rows = [[]];
  const cell = /(?:"((?:[^"]|"")*)"|([^\t\r\n]*))(\t|\r?\n|$)/g;
  for (let found = cell.exec(text); found && found.index < text.length; found = cell.exec(text)) {
    rows[rows.length - 1].push((found[1]?.replaceAll('""', '"') ?? found[2]).replaceAll(/\s*[\r\n]+\s*/g, ' ').trim());
    if (found[3] === '') break;
    if (found[3] !== '\t') rows.push([]);
  }
  return rows.filter((row) => row.length > 0);
}

// @ts-check
/** What is on the rack, as one table that is counted anew as a whole. */
import { Grid } from './grid.js';
import { html } from './html.js';
import { drafts, problemsByCell, send, words, wrong } from './shopdesk.js';

export const STOCK = 'stock';
const KINDS = ['', 'stick', 'drop', 'bin'];

/** @param {any} props */
export function Stock({ now }) {
  const columns = now.columns;
  const count = Math.max(now.lines.length, ...[...drafts.value.keys()].map((path) => Number(path.match(/\[(\d+)\]/)?.[1] ?? -1) + 1));
  const path = (i, column) => STOCK + '[' + i + '].' + column;
  const rows = Array.from({ length: count + 1 }, (_, i) => ({
    id: STOCK + '[' + i + ']',
    title: String(i + 1),
    out: i < now.lines.length ? i : undefined,
    cells: columns.map((column, at) => ({ path: path(i, column), value: now.lines[i]?.[at] ?? '', ...(column === 'kind' ? { choices: KINDS } : {}) })),
  }));
  /**
   * @param {string} label
   * @param {string[][]} lines
   */
  const become = (label, lines) => send(label, [{ path: STOCK, from: now.lines, to: lines }]);
  /** @param {Map<string, string>} entered */
  const keep = (entered) => {
    const all = new Map([...drafts.value, ...entered]);
    drafts.value = all;
    const last = Math.max(count, ...[...all.keys()].map((one) => Number(one.match(/\[(\d+)\]/)?.[1]) + 1));
    const lines = Array.from({ length: last }, (_, i) => columns.map((column, at) => (all.get(path(i, column)) ?? now.lines[i]?.[at] ?? '').trim())).filter((line) => line.some(Boolean));
    if (JSON.stringify(lines) === JSON.stringify(now.lines)) {
      drafts.value = new Map();
      wrong.value = [];
    } else become('Stock, ' + all.size + (all.size === 1 ? ' cell' : ' cells'), lines);
  };
  return html`
    <h2>Stock</h2>
    <p class="help">What is on the rack: sticks and drops by the name painted on them, bins with how many. The last line is for what is new; paste lines from a spreadsheet into it. Orders over jobs take from here. The ledger keeps what came on and went off.</p>
    ${wrong.value.filter((one) => !one.field.startsWith(STOCK)).map((one) => html`<p class="problem" role="alert">${one.field}: ${words(one)}</p>`)}
    <${Grid} title="Stock" columns=${columns.map((title) => ({ title }))} rows=${rows} drafts=${drafts.value} wrong=${problemsByCell()} keep=${keep} extend=${path} out=${(row) => become('Take off line ' + row.title, now.lines.filter((_, i) => i !== row.out))} />
    <details><summary>What the catalog calls its sections and plates</summary><p class="help">${[...now.bars, ...now.plates].join(', ')}</p></details>`;
}

// @ts-check
/** The shop's own figures in tables: terms, suppliers, hours, limits, prices, stock. */
import { batch, signal } from '@preact/signals';
import { useEffect, useRef, useState } from 'preact/hooks';
import { get, post, Refusal } from './api.js';
import { Grid, pasted } from './grid.js';
import { html } from './html.js';
import { sentence } from './form.js';
import { busy, notice, say, tell } from './state.js';

/** Which table is shown; null where none is. */
export const sheet = signal(/** @type {string | null} */ (null));
const desk = signal(/** @type {any} */ (null));
/** What was entered and is not written, by the path of its cell. */
const drafts = signal(/** @type {Map<string, string>} */ (new Map()));
const wrong = signal(/** @type {any[]} */ ([]));
const clash = signal(/** @type {any} */ (null));

const APART = { prices: '/api/tables/prices', stock: '/api/tables/stock' };
const STOCK = 'stock';
const KINDS = ['', 'stick', 'drop', 'bin'];
const MOST_ROWS = 150;

/** @param {string | null} key */
export async function openSheet(key) {
  if (key !== sheet.value) {
    batch(() => {
      sheet.value = key;
      drafts.value = new Map();
      wrong.value = [];
      clash.value = null;
    });
  }
  if (key) await reload();
}

/** Looks at the tables anew; what was entered and is not written stays. */
export async function reload() {
  const key = sheet.value;
  if (!key) return;
  busy.value++;
  try {
    const now = await get(APART[key] ?? '/api/tables');
    if (sheet.value === key) desk.value = { ...now, of: key };
  } catch (error) {
    tell(error);
  } finally {
    busy.value--;
  }
}

/** @param {'undo' | 'redo'} which */
export async function shopStep(which) {
  const what = desk.value?.[which];
  if (!what) return;
  try {
    await post('/api/tables/' + which, {});
    batch(() => {
      drafts.value = new Map();
      wrong.value = [];
    });
    await reload();
    say((which === 'undo' ? 'Taken back: ' : 'Done again: ') + what);
  } catch (error) {
    tell(error);
  }
}

/**
 * @param {string} label
 * @param {any[]} edits
 * @returns {Promise<boolean>} whether it was done
 */
async function send(label, edits) {
  busy.value++;
  try {
    await post('/api/tables/edit', { label, edits });
    batch(() => {
      drafts.value = new Map();
      wrong.value = [];
      notice.value = null;
    });
    await reload();
    return true;
  } catch (error) {
    if (error instanceof Refusal && error.status === 409 && error.json.conflicts) {
      await reload();
      clash.value = { label, edits, conflicts: error.json.conflicts };
    } else if (error instanceof Refusal && error.json.problems) {
      wrong.value = error.json.problems;
      say(error.json.problems.length + ' to mend');
    } else tell(error);
    return false;
  } finally {
    busy.value--;
  }
}

const words = (one) => 'Given ' + one.given + '; allowed: ' + one.allowed + '. ' + one.remedy;
const plain = (path) => path.replaceAll('"', '');

export function Shop() {
  const now = desk.value;
  const key = sheet.value ?? 'shop';
  const tables = now?.of === key ? now.tables ?? [] : [];
  return html`
    <header class="head">
      <button class="back" onClick=${() => (location.hash = '')}>Jobs</button>
      <h1>The shop</h1>
      <p class="where">its own figures, in the folder catalog beside the jobs and in the ledger</p>
      <p class="steps">
        <button disabled=${!now?.undo} title=${now?.undo ?? ''} onClick=${() => shopStep('undo')}>Take back</button>
        <button disabled=${!now?.redo} title=${now?.redo ?? ''} onClick=${() => shopStep('redo')}>Do again</button>
      </p>
    </header>
    <nav class="tabs" aria-label="Tables of the shop">
      ${SHEETS.map(([one, title]) => html`<button key=${one} aria-current=${one === key ? 'page' : undefined} onClick=${() => (location.hash = 'shop=' + one)}>${title}</button>`)}
    </nav>
    <main class="shop">
      ${now?.of !== key ? html`<p class="help">Looking it up …</p>` : key === STOCK ? html`<${Stock} now=${now} />` : html`<${Table} key=${key} table=${tables.find((one) => one.key === key) ?? tables[0]} />`}
      <${Clash} />
    </main>`;
}

/** @type {[string, string][]} */
const SHEETS = [
  ['shop', 'Rates and terms'],
  ['extras', 'Extras'],
  ['suppliers', 'Suppliers'],
  ['prices', 'Prices'],
  ['stock', 'Stock'],
  ['operations', 'Hours'],
  ['limits', 'Limits'],
  ['welding', 'Welding'],
  ['cutting', 'Cutting'],
];

/** @param {any} props */
function Table({ table }) {
  const [sought, setSought] = useState('');
  const [adding, setAdding] = useState(/** @type {any} */ (null));
  if (!table) return null;
  const seek = sought.trim().toLowerCase();
  const found = seek ? table.rows.filter((row) => (row.title + ' ' + row.cells.map((one) => one.value).join(' ')).toLowerCase().includes(seek)) : table.rows;
  const shown = found.slice(0, MOST_ROWS);
  const value = new Map(table.rows.flatMap((row) => row.cells.map((one) => [one.path, one.value])));
  /** @param {Map<string, string>} entered */
  const keep = (entered) => {
    const all = new Map([...drafts.value, ...entered].filter(([path, text]) => text.trim() !== value.get(path)));
    drafts.value = all;
    if (all.size === 0) {
      wrong.value = [];
      return;
    }
    const [first] = all.keys();
    const row = table.rows.find((one) => one.cells.some((cell) => cell.path === first));
    send(all.size === 1 ? row?.title + ': ' + (all.get(first) || 'as standard') : table.title + ', ' + all.size + ' cells', [...all].map(([path, text]) => ({ path, from: value.get(path), to: text.trim() || null })));
  };
  const known = new Set([...value.keys(), ...table.rows.map((row) => row.id)].map((path) => plain(path ?? '')));
  return html`
    <h2>${table.title}</h2>
    <p class="help">${sentence(table.help)}. Paste cells from a spreadsheet into any cell. ${table.key === 'prices' ? 'What a price was before is kept in the ledger.' : 'Bold is the shop’s own; empty a cell to go back to the standard figure.'}</p>
    ${table.rows.length > 20 && html`<p class="seek"><label for="seek">Find</label> <input id="seek" value=${sought} autocomplete="off" onInput=${(event) => setSought(event.target.value)} /></p>`}
    ${wrong.value.filter((one) => !known.has(one.field)).map((one) => html`<p class="problem" role="alert">${one.field}: ${words(one)}</p>`)}
    ${table.problems.map((one) => html`<p class="problem">In the catalog as it is, ${one.field}: ${words(one)}</p>`)}
    <${Grid} title=${table.title} columns=${table.columns} rows=${shown} drafts=${drafts.value} wrong=${problemsByCell()} keep=${keep} out=${(row) => send('Take out ' + row.title, [{ path: row.out, from: null, to: null }])} />
    ${found.length > shown.length && html`<p class="help">and ${found.length - shown.length} more: write into Find what you look for.</p>`}
    ${table.adds.map((add) => adding === add.path ? html`<${Add} key=${add.path} add=${add} done=${() => setAdding(null)} />` : html`<p class="answers"><button onClick=${() => setAdding(add.path)}>Add to ${add.title.split(',')[0].split(':')[0]}</button></p>`)}
    ${table.key === 'prices' && html`<${List} />`}`;
}

/** What is wrong, by the cell or the line that it is at. */
function problemsByCell() {
  const by = new Map();
  for (const one of wrong.value) by.set(one.field, words(one));
  return by;
}

/** @param {any} props */
function Add({ add, done }) {
  const named = add.place === undefined;
  const fields = add.fields.filter((one) => !one.fields);
  const form = useRef(/** @type {any} */ (null));
  useEffect(() => form.current?.elements[0].focus(), []);
  const submit = async (event) => {
    event.preventDefault();
    const given = event.target.elements;
    const entry = {};
    for (const one of fields) if (given['new-' + one.key].value.trim()) entry[one.key] = given['new-' + one.key].value.trim();
    const name = named ? given['new-name'].value.trim() : '';
    if (await send('Add ' + (name || 'a line'), [{ path: named ? add.path + '."' + name + '"' : add.path + '[' + add.place + ']', from: null, to: entry }])) done();
  };
  return html`<form class="adding" ref=${form} onSubmit=${submit}>
    ${named && html`<label>Name<input name="new-name" required maxlength="60" pattern=${'[^"\\[\\]]+'} autocomplete="off" /></label>`}
    ${fields.map((one) => html`<label key=${one.key}>${one.help}${one.choices ? html`<select name=${'new-' + one.key}>${!one.required && html`<option></option>`}${one.choices.map((word) => html`<option key=${word}>${word}</option>`)}</select>` : html`<input name=${'new-' + one.key} required=${one.required} placeholder=${one.default ?? ''} autocomplete="off" />`}<span class="help">${one.allowed}</span></label>`)}
    <p class="answers"><button class="main">Add</button> <button type="button" onClick=${done}>Leave it</button></p>
  </form>`;
}

/** A supplier's list, pasted as a whole. */
function List() {
  const [seen, setSeen] = useState(/** @type {any} */ (null));
  const [text, setText] = useState('');
  const ask = async (write) => {
    const source = /** @type {HTMLInputElement} */ (document.getElementById('list-source')).value.trim() || 'a list pasted on the page';
    busy.value++;
    try {
      setSeen(await post('/api/tables/prices/list', { lines: pasted(text), source, write }));
      if (write) {
        setText('');
        await reload();
      }
    } catch (error) {
      setSeen({ refused: /** @type {Error} */ (error).message });
    } finally {
      busy.value--;
    }
  };
  return html`<details class="list"><summary>Take in a supplier's list</summary>
    <p class="help">Paste the whole list with its headings: item or title, price, and where there are any unit, length, width and from which number on. Nothing is written before you have seen what changes.</p>
    <label for="list-text">The list</label><textarea id="list-text" rows="6" value=${text} onInput=${(event) => setText(event.target.value)}></textarea>
    <label for="list-source">Where it comes from</label><input id="list-source" maxlength="120" autocomplete="off" />
    <p class="answers"><button disabled=${!text.trim()} onClick=${() => ask(false)}>See what changes</button>
    ${seen && !seen.refused && !seen.written && html` <button class="main" onClick=${() => ask(true)}>${seen.far_off ? 'The lines FAR OFF are right: take it in' : 'Take it in'}</button>`}</p>
    ${seen?.refused && html`<p class="refusal" role="alert">${seen.refused}</p>`}
    ${seen?.words && html`<pre tabindex="0">${seen.words}</pre>`}
    ${seen?.written && html`<p role="status">Taken in.</p>`}
  </details>`;
}

/** @param {any} props */
function Stock({ now }) {
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

function Clash() {
  const now = clash.value;
  if (!now) return null;
  const shown = (value) => (value === null || value === undefined || value === '' ? 'nothing' : typeof value === 'object' ? value.map((line) => line.filter(Boolean).join(', ')).join('; ') : String(value));
  const mine = () => {
    clash.value = null;
    send(now.label, now.edits.map((edit) => ({ ...edit, from: now.conflicts.find((one) => one.path === edit.path)?.now ?? edit.from })));
  };
  const leave = () => batch(() => {
    clash.value = null;
    drafts.value = new Map();
    wrong.value = [];
  });
  return html`<div class="cover"><section class="question" role="alertdialog" aria-modal="true" aria-labelledby="clash-title">
    <h2 id="clash-title">Two hands at one cell</h2>
    <p>It was changed elsewhere while you changed it here. Nothing is overwritten until you say so.</p>
    <table>
      <thead><tr><th>cell</th><th>as it stands now</th><th>yours</th></tr></thead>
      <tbody>${now.conflicts.map((one) => html`<tr key=${one.path}><th>${one.path}</th><td>${shown(one.now)}</td><td>${shown(now.edits.find((edit) => edit.path === one.path)?.to)}</td></tr>`)}</tbody>
    </table>
    <p class="answers">
      <button class="main" ref=${(one) => one?.focus()} onClick=${leave}>Leave it as it stands</button>
      <button onClick=${mine}>Put mine in its place</button>
    </p>
  </section></div>`;
}

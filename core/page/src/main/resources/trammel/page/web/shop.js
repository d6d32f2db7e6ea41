// @ts-check
/** The shop's own figures in tables: terms, suppliers, hours, limits, prices, stock. */
import { batch } from '@preact/signals';
import { useEffect, useRef, useState } from 'preact/hooks';
import { sentence } from './form.js';
import { Grid } from './grid.js';
import { html } from './html.js';
import { PriceList } from './pricelist.js';
import { clash, desk, drafts, plain, problemsByCell, send, sheet, shopStep, words, wrong } from './shopdesk.js';
import { Stock, STOCK } from './stock.js';

const MOST_ROWS = 150;

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
    ${wrong.value.filter((one) => !known.has(plain(one.field))).map((one) => html`<p class="problem" role="alert">${one.field}: ${words(one)}</p>`)}
    ${table.problems.map((one) => html`<p class="problem">In the catalog as it is, ${one.field}: ${words(one)}</p>`)}
    <${Grid} title=${table.title} columns=${table.columns} rows=${shown} drafts=${drafts.value} wrong=${problemsByCell()} keep=${keep} out=${(row) => send('Take out ' + row.title, [{ path: row.out, from: null, to: null }])} />
    ${found.length > shown.length && html`<p class="help">and ${found.length - shown.length} more: write into Find what you look for.</p>`}
    ${table.adds.map((add) => adding === add.path ? html`<${Add} key=${add.path} add=${add} done=${() => setAdding(null)} />` : html`<p class="answers"><button onClick=${() => setAdding(add.path)}>Add to ${add.title.split(',')[0].split(':')[0]}</button></p>`)}
    ${table.key === 'prices' && html`<${PriceList} />`}`;
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

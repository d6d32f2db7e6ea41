// @ts-check
/** A table whose cells are typed into and pasted into from a spreadsheet, what is wrong beside each. */
import { useEffect, useState } from 'preact/hooks';
import { pasted } from './clipboard.js';
import { html } from './html.js';

const LONG = 60;

/**
 * @param {{title: string, columns: any[], rows: any[], drafts: Map<string, string>, wrong: Map<string, string>,
 *   keep: (entered: Map<string, string>) => void, out: (row: any) => void, extend?: (row: number, column: string) => string}} props
 */
export function Grid({ title, columns, rows, drafts, wrong, keep, out, extend }) {
  /** @param {number} r @param {number} c */
  const pathAt = (r, c) => {
    const cell = rows[r]?.cells[c];
    return cell ? (cell.fixed ? undefined : cell.path) : extend && columns[c] ? extend(r, columns[c].title) : undefined;
  };
  const paste = (event, r, c) => {
    const text = event.clipboardData?.getData('text/plain') ?? '';
    if (!/[\t\n]/.test(text.replace(/\r?\n$/, ''))) return;
    event.preventDefault();
    const entered = new Map();
    pasted(text).forEach((line, down) => line.forEach((value, right) => {
      const path = pathAt(r + down, c + right);
      if (path) entered.set(path, value);
    }));
    keep(entered);
  };
  const down = (event, r, c) => {
    const next = event.target.closest('table').querySelector('[data-at="' + (r + 1) + ',' + c + '"]');
    event.target.blur();
    next?.focus();
  };
  const problem = (path) => wrong.get((path ?? '').replaceAll('"', ''));
  return html`<div class=${'scroll grid' + (extend ? ' numbered' : '')} tabindex="0" role="region" aria-label=${title}><table>
    <thead><tr><th scope="col"><span class="unseen">line</span></th>${columns.map((one) => html`<th key=${one.title} scope="col" title=${one.help}>${one.title}</th>`)}<th><span class="unseen">take out</span></th></tr></thead>
    <tbody>${rows.map((row, r) => html`<tr key=${row.id}>
      <th scope="row">${row.title}${row.help && html`<span class="how">${row.help}</span>`}${problem(row.id) && row.cells.every((cell) => cell.path !== row.id) && html`<p class="problem" role="alert">${problem(row.id)}</p>`}</th>
      ${row.cells.map((cell, c) => cell.fixed
        ? html`<td key=${c} class="fixed">${cell.value}</td>`
        : html`<td key=${c}><${Cell} cell=${cell} label=${row.title + ', ' + columns[c].title} at=${r + ',' + c} draft=${drafts.get(cell.path)} wrong=${problem(cell.path)} keep=${(text) => keep(new Map([[cell.path, text]]))} paste=${(event) => paste(event, r, c)} down=${(event) => down(event, r, c)} /></td>`)}
      <td>${row.out !== undefined && html`<button class="small" aria-label=${'Take out ' + row.title} title="Take out" onClick=${() => out(row)}>×</button>`}</td>
    </tr>`)}</tbody></table></div>`;
}

/** @param {any} props */
function Cell({ cell, label, at, draft, wrong, keep, paste, down }) {
  const now = draft ?? cell.value;
  const [typed, setTyped] = useState(now);
  useEffect(() => setTyped(now), [now]);
  const blur = () => typed !== now && keep(typed);
  const more = {
    'data-at': at,
    'data-cell': cell.path,
    'aria-label': label,
    'aria-invalid': !!wrong,
    class: cell.own ? 'own' : undefined,
    value: typed,
    onBlur: blur,
    onPaste: paste,
  };
  const control = cell.choices
    ? html`<select ...${more} onBlur=${undefined} value=${now} onChange=${(event) => keep(event.target.value)}>${cell.choices.includes(now) ? '' : html`<option value=${now} selected>${now || cell.default || ''}</option>`}${cell.choices.map((one) => html`<option key=${one} value=${one} selected=${one === now}>${one}</option>`)}</select>`
    : cell.value.length > LONG
      ? html`<textarea ...${more} rows="3" onInput=${(event) => setTyped(event.target.value)}></textarea>`
      : html`<input ...${more} autocomplete="off" spellcheck=${false} placeholder=${cell.default ?? ''} onInput=${(event) => setTyped(event.target.value)} onKeyDown=${(event) => event.key === 'Enter' ? down(event) : event.key === 'Escape' && setTyped(now)} />`;
  return html`<span class=${'cell' + (wrong ? ' wrong' : draft !== undefined ? ' draft' : '')}>${control}${wrong && html`<span class="problem" role="alert">${wrong}</span>`}</span>`;
}

// @ts-check
/** What the page has to say besides: remarks, and two hands at one field. */
import { html } from './html.js';
import { at, conflict, notice, settle, spoken } from './state.js';

export function Notice() {
  const now = notice.value;
  return html`<div class="notices" role="status">
    ${now && html`<div class=${'notice ' + now.kind}>
      <p>${now.words}</p>
      <button onClick=${() => (notice.value = null)}>Close</button>
    </div>`}
  </div>`;
}

export const Spoken = () => html`<p class="unseen" role="status">${spoken.value}</p>`;

/** @param {any} value */
const shown = (value) =>
  value === undefined || value === null ? 'nothing' : typeof value === 'object' ? JSON.stringify(value) : String(value);

export function Conflict() {
  const now = conflict.value;
  if (!now) return null;
  return html`<div class="cover"><section class="question" role="alertdialog" aria-modal="true" aria-labelledby="conflict-title">
    <h2 id="conflict-title">Two hands at one field</h2>
    <p>It was changed elsewhere while you changed it here. Nothing is overwritten until you say so.</p>
    <table>
      <thead><tr><th>field</th><th>as it stands now</th><th>yours</th></tr></thead>
      <tbody>${now.edits.map((edit) => html`<tr><th>${edit.path}</th><td>${shown(at(edit.path))}</td><td>${shown(edit.to)}</td></tr>`)}</tbody>
    </table>
    <p class="answers">
      <button class="main" ref=${(one) => one?.focus()} onClick=${() => settle(false)}>Leave it as it stands</button>
      <button onClick=${() => settle(true)}>Put mine in its place</button>
    </p>
  </section></div>`;
}

// @ts-check
/** Variants that were put aside, side by side with the job as it stands, and what makes the difference. */
import { useEffect, useState } from 'preact/hooks';
import { get, jobPath, post } from './api.js';
import { html } from './html.js';
import { change, job, judged, tell, units } from './state.js';
import { hours, length, money, weight } from './units.js';

export function Tray() {
  const [tray, setTray] = useState(/** @type {any} */ (null));
  const path = jobPath(job.value.file) + '/tray';
  const revision = job.value.revision;
  useEffect(() => {
    get(path).then(setTray).catch((error) => setTray({ refused: error.message }));
  }, [path, revision]);
  if (!tray) return html`<h2>Tray</h2><p class="help">Working out …</p>`;
  if (tray.refused) return html`<h2>Tray</h2><p class="refusal">${tray.refused}</p>`;
  const keep = async (event) => {
    event.preventDefault();
    const { name } = event.target.elements;
    try {
      setTray(await post(path + '/keep', { name: name.value }));
      name.value = '';
    } catch (error) {
      tell(error);
    }
  };
  const drop = (name) => post(path + '/drop', { name }).then(setTray).catch(tell);
  const take = (name, edits) => change('Take variant ' + name, edits.map((one) => ({ ...one, to: one.to ?? null })));
  const cash = (amount) => money(amount, judged.value?.price?.currency ?? 'USD');
  const rows = [
    ['price with tax', (one) => cash(one.total)],
    ['mean hours', (one) => hours(one.mean_h)],
    ['eight of ten', (one) => hours(one.p80_h)],
    ['weld', (one) => length(one.weld_length_mm, units.value, 1)],
    ['steel added', (one) => weight(one.steel_kg, units.value)],
    ['STOP', (one) => one.stop],
    ['look again', (one) => one.look_again],
  ];
  return html`
    <h2>Tray</h2>
    <p class="help">Put the job as it stands on the tray, change it, and hold both against each other.</p>
    <form class="keeping" onSubmit=${keep}><label for="variant">Call it</label><input id="variant" name="name" required maxlength="40" autocomplete="off" placeholder="coil springs" /><button class="main">Put on the tray</button></form>
    ${tray.variants.length > 1 && html`<div class="scroll" tabindex="0" role="region" aria-label="Variants side by side"><table class="variants">
      <thead><tr><th></th>${tray.variants.map((one) => html`<th key=${one.variant} scope="col">${one.variant}</th>`)}</tr></thead>
      <tbody>${rows.map(([title, cell]) => html`<tr key=${title}><th scope="row">${title}</th>${tray.variants.map((one) => html`<td key=${one.variant} class="number">${/** @type {any} */ (cell)(one)}</td>`)}</tr>`)}
      <tr><td></td>${tray.variants.map((one, i) => html`<td key=${one.variant}>${i > 0 && html`<button class="small main" disabled=${tray.edits[i - 1].length === 0} onClick=${() => take(one.variant, tray.edits[i - 1])}>Take it</button> <button class="small" onClick=${() => drop(one.variant)}>Off the tray</button>`}</td>`)}</tr></tbody></table></div>`}
    ${tray.left_out.map((one) => html`<p key=${one.variant} class="problem">${one.variant} cannot be worked out: ${one.why} <button class="small" onClick=${() => drop(one.variant)}>Off the tray</button></p>`)}
    ${tray.variants.slice(1).map((one) => html`<${Difference} key=${one.variant} one=${one} cash=${cash} />`)}`;
}

const CAUSES = 12;

/** @param {any} props */
function Difference({ one, cash }) {
  const parts = [...one.price_differences].sort((a, b) => Math.abs(b.change) - Math.abs(a.change));
  return html`<details><summary>What makes ${one.variant} differ in price</summary>
    <table><tbody>${parts.slice(0, CAUSES).map((part) => html`<tr key=${part.name}><th scope="row">${part.name} <span class="how">${part.first} → ${part.other}</span></th><td class="number">${part.change > 0 ? '+' : ''}${cash(part.change)}</td></tr>`)}</tbody></table>
    ${parts.length > CAUSES && html`<p class="help">and ${parts.length - CAUSES} smaller ones</p>`}</details>`;
}

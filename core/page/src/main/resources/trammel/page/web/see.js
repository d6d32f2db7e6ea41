// @ts-check
/** What is in the drawing: the kinds of parts, and the part that was pressed. */
import { html } from './html.js';
import { tight } from './checks.js';
import { checks, judged, scene, selected, units } from './state.js';
import { shown } from './drawing.js';
import { length, money, weight } from './units.js';

const KINDS = [
  ['plate', 'plates'],
  ['tube', 'tubes'],
  ['bought', 'bought parts'],
  ['bolt', 'bolts'],
  ['weld', 'welds'],
  ['vehicle', 'the vehicle'],
  ['tool', 'fit-up tools'],
];

export function See() {
  const now = scene.value;
  if (judged.value?.refused) return html`<p class="refusal">${judged.value.refused}</p>`;
  if (judged.value?.no_price) return html`<p class="refusal">${judged.value.no_price}</p>`;
  if (!now) return html`<p class="help">Drawing …</p>`;
  const part = now.parts.find((one) => one.id === selected.value);
  return html`
    <h2>${part ? part.id : 'As it will be built'}</h2>
    ${part ? html`<${Part} part=${part} />` : html`<${Whole} />`}
    <h3>Show</h3>
    <ul class="kinds">${KINDS.map(([kind, title]) => html`<li key=${kind}><label><input type="checkbox" checked=${shown.value[kind]} onChange=${(event) => (shown.value = { ...shown.value, [kind]: event.target.checked })} /> ${title} <span class="number">${kind === 'weld' ? now.seams.length : now.parts.filter((one) => one.kind === kind).length}</span></label></li>`)}</ul>
    <details><summary>All parts</summary><ul class="parts">${now.parts.filter((one) => shown.value[one.kind]).map((one) => html`<li key=${one.id}><button class="link" aria-pressed=${one.id === selected.value} onClick=${() => (selected.value = one.id)}>${one.id}</button></li>`)}</ul></details>`;
}

function Whole() {
  const now = scene.value;
  const near = new Map();
  for (const [id, check] of tight(checks.value, now.parts)) {
    if (![...near.values()].includes(check)) near.set(id, check);
  }
  return html`<p class="help">${judged.value?.linkage}; ${judged.value?.spring?.toLowerCase()}. The job adds ${weight(now.added_kg, units.value)}. Press a part to see why it is there.</p>
    ${near.size > 0 && html`<h3>Tight</h3><ul class="plain">${[...near].map(([id, check]) => html`<li key=${id}><button class="link" onClick=${() => (selected.value = id)}>${id}</button>: ${check.value_text}, ${check.title}</li>`)}</ul>`}`;
}

/** @param {any} props */
function Part({ part }) {
  const now = scene.value;
  const line = judged.value?.price?.lines.find((one) => one.title === part.name || one.title.startsWith(part.name + ' x'));
  const plate = judged.value?.plates?.find((one) => one.name === part.name);
  const tube = judged.value?.tubes?.flatMap((section) => section.pieces.map((piece) => ({ ...piece, section: section.section }))).find((one) => one.name === part.name);
  const stock = judged.value?.price?.lines.find((one) => one.line.startsWith((plate?.plate ?? tube?.section ?? '-') + '-'));
  const seams = now.seams.filter((one) => one.parts.includes(part.id) || one.onto.includes(part.id));
  const looks = checks.value.filter((one) => one.where && [part.id, part.name, part.carrier].some((word) => word !== 'frame' && word !== 'axle' && one.where.includes(word)));
  const cash = (amount) => money(amount, judged.value.price.currency);
  return html`<dl class="part">
    ${part.name !== part.id && html`<dt>is a</dt><dd>${part.name}</dd>`}
    <dt>why it is there</dt><dd>${part.why}</dd>
    <dt>rides on</dt><dd>${part.carrier}</dd>
    ${part.mass_kg > 0 && html`<dt>weighs</dt><dd>${weight(part.mass_kg, units.value)}</dd>`}
    ${plate && html`<dt>cut from</dt><dd>${length(plate.thickness_mm, units.value)} plate, ${length(plate.width_mm, units.value)} x ${length(plate.height_mm, units.value)}, ${plate.quantity} of them</dd>`}
    ${tube && html`<dt>sawn to</dt><dd>${length(tube.cut_length_mm, units.value)}, ${tube.ends}</dd>`}
    ${line && html`<dt>costs</dt><dd>${cash(line.price)} for ${line.quantity}</dd>`}
    ${!line && stock && html`<dt>its stock costs</dt><dd>${cash(stock.price)} for ${stock.quantity}, ${stock.title}</dd>`}
    ${seams.length > 0 && html`<dt>welded</dt><dd>${seams.length} seams, ${length(seams.reduce((sum, one) => sum + one.length_mm, 0), units.value)} in all</dd>`}
    <dt>checks that name it</dt><dd>${looks.length ? html`<ul class="plain">${looks.map((one) => html`<li key=${one.check}>${one.verdict}: ${one.value_text}, ${one.title}</li>`)}</ul>` : 'none'}</dd>
  </dl>
  <button onClick=${() => (selected.value = '')}>Leave the part</button>`;
}

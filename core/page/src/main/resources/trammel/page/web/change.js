// @ts-check
/** Changing what is built: linkage, springs, their options, and points that the vehicle dictates. */
import { html } from './html.js';
import { Field } from './form.js';
import { view } from './drawing.js';
import { together } from './handles.js';
import { Choose } from './measure.js';
import { at, catalog, job, scene, set, units } from './state.js';
import { length } from './units.js';

/** Fields with a place of their own. */
const APART = new Set(['linkage', 'spring', 'linkage_options', 'spring_options', 'additions', 'pickups']);

export function Change() {
  const found = catalog.value;
  const chosen = job.value.document?.chosen ?? {};
  if (!found) return null;
  const fields = found.fields.find((one) => one.key === 'chosen').fields;
  const linkage = found.linkages.find((one) => one.id === chosen.linkage);
  const spring = found.springs.find((one) => one.id === chosen.spring);
  return html`
    <h2>Change</h2>
    <${Points} />
    <${Choose} of="linkages" path="chosen.linkage" title="What carries the axle" />
    <${Choose} of="springs" path="chosen.spring" title="What it rides on" />
    ${fields.filter((one) => !APART.has(one.key)).map((field) => html`<${Field} key=${field.key} field=${field} path=${'chosen.' + field.key} />`)}
    ${linkage && html`<${Options} title=${linkage.title} options=${linkage.options} path="chosen.linkage_options" />`}
    ${spring && html`<${Options} title=${spring.title} options=${spring.options} path="chosen.spring_options" />`}
    ${found.additions.length > 0 && html`<fieldset class="group"><legend>Added to both</legend>${found.additions.map((one) => html`<${Addition} key=${one.id} one=${one} />`)}</fieldset>`}
    ${found.left_out.map((words) => html`<p class="problem">${words}</p>`)}`;
}

/** @param {any} props */
function Options({ title, options, path }) {
  return html`<fieldset class="group"><legend>${title}</legend>${options.map((field) => html`<${Field} key=${path + field.key} field=${field} path=${path + '.' + field.key} />`)}</fieldset>`;
}

/** @param {any} props */
function Addition({ one }) {
  const path = 'chosen.additions.' + one.id;
  const added = at('chosen.additions')?.[one.id] !== undefined;
  return html`<div class="addition"><label><input type="checkbox" checked=${added} onChange=${(event) => set((event.target.checked ? 'Add ' : 'Leave out ') + one.title, { [path]: event.target.checked ? {} : null })} /> <strong>${one.title}</strong></label><p class="help">${one.summary}</p>
    ${added && one.options.map((field) => html`<${Field} key=${field.key} field=${field} path=${path + '.' + field.key} />`)}</div>`;
}

const AXES = ['forward', 'left', 'up'];

/** Where the points stand, and which of them the job sets itself. */
function Points() {
  const points = scene.value?.points ?? [];
  const pickups = at('chosen.pickups') ?? {};
  return html`<section class="points"><h3>Pick-up points at ride</h3>
    <p class="help">Drag them in the side view, the plan or the rear view, in steps of ${units.value === 'metric' ? '1 mm' : '1/16 in'}; arrow keys move one as well. ${view.value === '3-d' && html`<button onClick=${() => (view.value = 'side')}>Side view</button>`}</p>
    <label class="together"><input type="checkbox" checked=${together.value} onChange=${(event) => (together.value = event.target.checked)} /> the other side moves along</label>
    <div class="scroll" tabindex="0" role="region" aria-label="Pick-up points"><table><thead><tr><th>point</th><th>forward</th><th>left</th><th>up</th><th></th></tr></thead>
    <tbody>${points.flatMap((point) => ['frame', 'axle'].map((end) => {
      const own = pickups[point.name]?.[end];
      return html`<tr key=${point.name + end} class=${own ? 'own' : ''}><th scope="row">${point.name}, ${end}</th>${point[end].map((value, i) => html`<td key=${i} class="number">${length(value, units.value)}${own?.[AXES[i]] !== undefined ? ' *' : ''}</td>`)}<td>${own && html`<button class="small" aria-label=${'As proposed: ' + point.name + ', ' + end} onClick=${() => set('As proposed: ' + point.name + ', ' + end, { ['chosen.pickups.' + point.name + '.' + end]: null })}>as proposed</button>`}</td></tr>`;
    }))}</tbody></table></div>
    <p class="help">* set in this job; the others are proposed from the measurements.</p></section>`;
}

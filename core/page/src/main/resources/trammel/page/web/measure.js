// @ts-check
/** The measuring sheet as a form. */
import { html } from './html.js';
import { Field } from './form.js';
import { Picture } from './picture.js';
import { catalog, go, job, missing, problems, set } from './state.js';

const MEASURED = ['job', 'measured'];

export function Measure() {
  const fields = catalog.value?.fields ?? [];
  const errors = [...problems.value.values()].flat().filter((one) => one.severity === 'error');
  const open = missing.value.size;
  const wrong = errors.filter((one) => one.given !== 'nothing').length;
  return html`
    <h2>Measure</h2>
    <p class="help">As the frame sits on the stands, on a level floor. Write as on a tape: <code>29 1/2</code>, <code>29-1/2"</code>, <code>5' 3"</code>, <code>750 mm</code>. Everything is kept at once: leave it and go on when you like, here or on another device.</p>
    ${open + wrong > 0 || errors.length > 0
      ? html`<p class="progress"><strong>${open}</strong> still needed${wrong > 0 ? html`, <strong>${wrong}</strong> to mend` : ''}. <button onClick=${next}>Go to the next</button></p>`
      : html`<p class="progress done">Everything that is needed is there. <button class="main" onClick=${() => go(job.value.file, 'checks')}>See what the checks say</button></p>`}
    ${fields.filter((one) => MEASURED.includes(one.key)).map((field) => html`<${Field} key=${field.key} field=${field} path=${field.key} picture=${(path) => html`<${Picture} path=${path} />`} />`)}
    <${Choice} />`;
}

/** Goes to the first field that is missing or wrong. */
function next() {
  const field = document.querySelector('.field.missing input, .field.missing select, .field.wrong input, .field.wrong select, .choose.missing button');
  if (field instanceof HTMLElement) {
    field.scrollIntoView({ block: 'center', behavior: matchMedia('(prefers-reduced-motion: reduce)').matches ? 'auto' : 'smooth' });
    field.focus({ preventScroll: true });
  }
}

/** What a new job needs besides: what carries the axle, on what it rides, how high. */
function Choice() {
  const chosen = catalog.value?.fields.find((one) => one.key === 'chosen');
  if (!chosen) return null;
  const plain = chosen.fields.filter((one) => one.key === 'ride' || one.key === 'pinion_angle');
  return html`<fieldset class="group"><legend>What is to be built</legend>
    <${Choose} of="linkages" path="chosen.linkage" title="What carries the axle" />
    <${Choose} of="springs" path="chosen.spring" title="What it rides on" />
    ${plain.map((field) => html`<${Field} key=${field.key} field=${field} path=${'chosen.' + field.key} />`)}
  </fieldset>`;
}

/** @param {any} props */
export function Choose({ of, path, title }) {
  const now = job.value.document?.chosen?.[path.split('.')[1]];
  const open = missing.value.has(path);
  const options = path + '_options';
  const choose = (one) => set(title + ': ' + one.title, { [path]: one.id, ...(job.value.document?.chosen?.[options.split('.')[1]] ? { [options]: null } : {}) });
  return html`<div class=${'choose' + (open ? ' missing' : '')} role="group" aria-label=${title}><p class="label">${title}${open && html` <span class="needed">needed</span>`}</p>
    <div class="ways">${(catalog.value?.[of] ?? []).map((one) => html`<button key=${one.id} data-way=${one.id} aria-pressed=${one.id === now} onClick=${() => one.id !== now && choose(one)}><strong>${one.title}</strong><span>${one.summary}</span></button>`)}</div>
  </div>`;
}

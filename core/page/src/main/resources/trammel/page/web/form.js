// @ts-check
/** Fields made from their declarations: what may be typed, what it is, and what is wrong with it. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { html } from './html.js';
import { at, change, judged, look, lookAway, missing, problems, set } from './state.js';

const REPEATS = new Set(['measured_length', 'measured_angle', 'measured_level_angle', 'measured_mass']);
const GROUPS = new Set(['section', 'point', 'measured_point', 'partial_point']);
const LOOK_AFTER_MS = 250;

/**
 * What was typed, as it stands in a job file.
 * @param {any} field
 * @param {string} typed
 */
function value(field, typed) {
  const text = typed.trim();
  if (text === '') return undefined;
  if ((REPEATS.has(field.kind) || field.kind === 'span') && text.includes(';')) {
    return text.split(';').map((one) => one.trim()).filter(Boolean);
  }
  return text;
}

/** @param {any} now */
function text(now) {
  if (now === undefined || now === null) return '';
  return Array.isArray(now) ? now.map(text).join('; ') : String(now);
}

/** @param {string} path */
const own = (path) => problems.value.get(path) ?? [];

/**
 * One field, or a group of them.
 * @param {{field: any, path: string, picture?: any, optionsOf?: (key: string) => any[]}} props
 */
export function Field({ field, path, picture, optionsOf }) {
  if (GROUPS.has(field.kind)) {
    return html`<fieldset class=${'group ' + field.kind}>
      <legend>${sentence(field.help)}${field.datum ? html` <span class="datum">${field.datum}</span>` : ''}</legend>
      ${picture?.(path)}
      <${Problems} path=${path} />
      ${field.fields.map((one) => html`<${Field} key=${one.key} field=${one} path=${path + '.' + one.key} picture=${picture} optionsOf=${optionsOf} />`)}
    </fieldset>`;
  }
  if (field.kind === 'section_list') return html`<${List} field=${field} path=${path} picture=${picture} />`;
  if (field.kind === 'section_map') return html`<${Named} field=${field} path=${path} />`;
  if (field.kind === 'options') {
    const fields = optionsOf?.(field.key) ?? [];
    return fields.length === 0 ? null : html`<fieldset class="group"><legend>${sentence(field.help.replace(', as listed by trammel layouts', ''))}</legend>
      ${fields.map((one) => html`<${Field} key=${one.key} field=${one} path=${path + '.' + one.key} />`)}</fieldset>`;
  }
  if (field.kind === 'options_map') return null;
  return html`<${Single} field=${field} path=${path} picture=${picture} />`;
}

/** @param {string} words */
export const sentence = (words) => words.charAt(0).toUpperCase() + words.slice(1);

/** @param {any} props */
export function Problems({ path }) {
  const here = own(path).filter((one) => one.given !== 'nothing');
  return html`${here.map((one) => html`<p class=${'problem ' + one.severity}>Given ${one.given}; allowed: ${one.allowed}. ${one.remedy}</p>`)}`;
}

/** @param {any} props */
function Single({ field, path, picture }) {
  const now = text(at(path));
  const [typed, setTyped] = useState(now);
  const focused = useRef(false);
  const waiting = useRef(0);
  useEffect(() => {
    if (!focused.current) setTyped(now);
  }, [now]);
  const id = 'f-' + path.replaceAll(/[^a-z0-9]+/gi, '-');
  const wrong = own(path);
  const open = missing.value.has(path) || wrong.some((one) => one.given === 'nothing');
  const told = wrong.filter((one) => one.given !== 'nothing');
  const label = sentence(field.help);

  const keep = async (to) => {
    clearTimeout(waiting.current);
    const was = at(path);
    if (JSON.stringify(to) === JSON.stringify(was)) {
      lookAway();
      return;
    }
    await change(label + ': ' + (to === undefined ? 'taken out' : text(to)), [{ path, from: was, to: to ?? null }]);
  };
  const input = (event) => {
    setTyped(event.target.value);
    clearTimeout(waiting.current);
    const to = value(field, event.target.value);
    waiting.current = window.setTimeout(() => look([{ path, from: at(path), to: to ?? null }]), LOOK_AFTER_MS);
  };
  const blur = () => {
    focused.current = false;
    keep(value(field, typed));
  };

  let control;
  if (field.kind === 'choice' || (field.choices && field.kind !== 'choices')) {
    control = html`<select id=${id} value=${now} aria-describedby=${id + '-more'} onChange=${(event) => keep(event.target.value || undefined)}>
      <option value="">${field.default !== undefined ? field.default + ', unless set' : field.required ? 'choose' : 'left out'}</option>
      ${field.choices.map((one) => html`<option key=${one} value=${one} selected=${one === now}>${one}</option>`)}</select>`;
  } else if (field.kind === 'flag') {
    control = html`<select id=${id} value=${now} aria-describedby=${id + '-more'} onChange=${(event) => keep(event.target.value === '' ? undefined : event.target.value === 'true')}>
      <option value="">${field.default !== undefined ? field.default + ', unless set' : 'left out'}</option><option value="true" selected=${now === 'true'}>yes</option><option value="false" selected=${now === 'false'}>no</option></select>`;
  } else if (field.kind === 'choices') {
    const chosen = /** @type {string[]} */ (at(path) ?? []);
    control = html`<span class="choices" id=${id} role="group" aria-label=${label}>${field.choices.map((one) => html`<label key=${one}><input type="checkbox" checked=${chosen.includes(one)} onChange=${(event) => keep(event.target.checked ? [...chosen, one] : chosen.filter((other) => other !== one))} /> ${one}</label>`)}</span>`;
  } else {
    control = html`<input id=${id} value=${typed} autocomplete="off" spellcheck=${false} placeholder=${field.default ?? ''} aria-describedby=${id + '-more'} aria-invalid=${told.some((one) => one.severity === 'error')}
      onFocus=${() => (focused.current = true)} onInput=${input} onBlur=${blur} onKeyDown=${(event) => event.key === 'Enter' && event.target.blur()} />`;
  }
  return html`<div class=${'field' + (open ? ' missing' : '') + (told.length ? ' wrong' : '')} data-field=${path}>
    ${picture?.(path)}
    <label for=${id}>${label}${open && html` <span class="needed">needed</span>`}</label>
    ${field.datum && html`<p class="datum">${field.datum}</p>`}
    ${control}
    <p class="help" id=${id + '-more'}>${field.choices ? '' : field.allowed}${REPEATS.has(field.kind) ? '; repeats with semicolons' : ''}${field.example && !field.choices && field.kind !== 'text' ? ', such as ' + field.example : ''}</p>
    ${told.map((one) => html`<p class=${'problem ' + one.severity} role="alert">Given ${one.given}; allowed: ${one.allowed}. ${one.remedy}</p>`)}
  </div>`;
}

/** @param {any} props */
function List({ field, path, picture }) {
  const entries = /** @type {any[]} */ (at(path) ?? []);
  return html`<fieldset class="group list"><legend>${sentence(field.help)}</legend>
    <${Problems} path=${path} />
    ${entries.map((entry, i) => html`<fieldset class="group" key=${i}><legend>${called(entry) ?? 'entry ' + (i + 1)}</legend>
      ${field.fields.map((one) => shownOf(entry, one) && html`<${Field} key=${one.key} field=${one} path=${path + '[' + i + '].' + one.key} picture=${picture} />`)}
      <button class="small" onClick=${() => set('Take out ' + (called(entry) ?? 'entry'), { [path + '[' + i + ']']: null })}>Take out ${called(entry) ?? 'it'}</button>
    </fieldset>`)}
    <${Add} field=${field} path=${path} count=${entries.length} />
  </fieldset>`;
}

/** By which of its fields an entry of a list is known. */
const called = (entry) => entry?.name ?? entry?.check ?? entry?.title ?? entry?.work ?? entry?.at;

/** Of two ways to give a form, the one that is not used is left away. */
const shownOf = (entry, one) => !(one.key === 'box' && entry?.cylinder) && !(one.key === 'cylinder' && entry?.box);

/** @param {any} props */
function Add({ field, path, count }) {
  const [open, setOpen] = useState(false);
  const form = field.fields.find((one) => one.key === 'kind');
  const shapes = field.fields.filter((one) => one.kind === 'section' && !one.required).map((one) => one.key);
  if (!open) return html`<button onClick=${() => setOpen(true)}>Add one</button>`;
  const add = async (event) => {
    event.preventDefault();
    const given = event.target.elements;
    const entry = {};
    for (const one of field.fields) {
      if (given[one.key]?.value) entry[one.key] = given[one.key].value.trim();
    }
    const shape = given.shape?.value;
    if (shape === 'box') entry.box = { forward: spanOf(given.forward.value), left: spanOf(given.left.value), up: spanOf(given.up.value) };
    if (shape === 'cylinder') entry.cylinder = { from: point(given, 'from'), to: point(given, 'to'), diameter: given.diameter.value.trim() };
    if (await set('Add ' + (entry.name ?? 'an entry'), { [path + '[' + count + ']']: entry })) setOpen(false);
  };
  return html`<form class="adding" onSubmit=${add}>
    ${field.fields.filter((one) => one.kind !== 'section').map((one) => html`<label key=${one.key}>${sentence(one.help)}
      ${one.choices ? html`<select name=${one.key}>${!one.required && html`<option value=""></option>`}${one.choices.map((word) => html`<option key=${word}>${word}</option>`)}</select>` : html`<input name=${one.key} required=${one.required} autocomplete="off" list=${one.key === 'check' ? 'checks-known' : undefined} />`}</label>`)}
    <datalist id="checks-known">${(judged.value?.checks ?? []).map((one) => html`<option key=${one.check} value=${one.check}>${one.title}</option>`)}</datalist>
    ${shapes.length > 0 && html`<${Shape} shapes=${shapes} />`}
    <button class="main">Add</button> <button type="button" onClick=${() => setOpen(false)}>Leave it</button>
  </form>`;
}

const spanOf = (typed) => typed.split(';').map((one) => one.trim()).filter(Boolean);
const point = (given, name) => ({ forward: given[name + '-forward'].value.trim(), left: given[name + '-left'].value.trim(), up: given[name + '-up'].value.trim() });

/** @param {any} props */
function Shape({ shapes }) {
  const [shape, setShape] = useState(shapes[0]);
  const input = (name, label, example) => html`<label key=${name}>${label}<input name=${name} required autocomplete="off" placeholder=${example} /></label>`;
  return html`<label>Form<select name="shape" value=${shape} onChange=${(event) => setShape(event.target.value)}>${shapes.map((one) => html`<option key=${one}>${one}</option>`)}</select></label>
    ${shape === 'box' && ['forward', 'left', 'up'].map((axis) => input(axis, axis + ', from and to', '12 in; 30 in'))}
    ${shape === 'cylinder' && ['from', 'to'].flatMap((end) => ['forward', 'left', 'up'].map((axis) => input(end + '-' + axis, end + ', ' + axis, '12 in')))}
    ${shape === 'cylinder' && input('diameter', 'diameter', '2 1/2 in')}`;
}

/** @param {any} props */
function Named({ field, path }) {
  const entries = Object.keys(at(path) ?? {});
  return html`<fieldset class="group list"><legend>${sentence(field.help)}${field.datum ? html` <span class="datum">${field.datum}</span>` : ''}</legend>
    <${Problems} path=${path} />
    ${entries.length === 0 && html`<p class="help">None.</p>`}
    ${entries.map((name) => html`<fieldset class="group" key=${name}><legend>${name}</legend>
      <${Problems} path=${path + '.' + name} />
      ${field.fields.map((one) => html`<${Field} key=${one.key} field=${one} path=${path + '.' + name + '.' + one.key} />`)}
      <button class="small" onClick=${() => set('Take out ' + name, { [path + '.' + name]: null })}>Take out ${name}</button>
    </fieldset>`)}
  </fieldset>`;
}

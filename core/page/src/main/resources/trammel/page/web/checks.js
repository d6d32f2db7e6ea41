// @ts-check
/** The checks, worst first, with what to change. */
import { html } from './html.js';
import { at, change, checks, judged, looked, optionChanges, set } from './state.js';

const WORDS = { stop: 'STOP', 'look again': 'look again', good: 'good', 'not judged': 'not judged' };

export function Checks() {
  const all = checks.value;
  const bad = all.filter((one) => one.verdict === 'stop' || one.verdict === 'look again');
  const open = all.filter((one) => one.verdict === 'not judged');
  const good = all.filter((one) => one.verdict === 'good');
  if (judged.value?.refused && !all.length) return html`<p class="refusal">${judged.value.refused}</p>`;
  return html`
    <h2>Checks, worst first</h2>
    ${looked.value?.checks && html`<p class="help">While you change: verdicts only; what to change is tried when you let go.</p>`}
    <ol class="checks">${bad.map((one) => html`<${Check} key=${one.check} check=${one} />`)}</ol>
    ${open.length > 0 && html`<h3>Not judged</h3><ul class="checks">${open.map((one) => html`<li key=${one.check} class="check"><p class="what">${one.title}</p><p class="where">${one.reason}</p></li>`)}</ul>`}
    <h3>Good</h3>
    <table class="good"><tbody>${good.map((one) => html`<tr key=${one.check}><th scope="row">${one.title}</th><td class="number">${one.value_text}</td><td>${one.good_text}</td></tr>`)}</tbody></table>
    ${judged.value?.caution && html`<p class="caution">${judged.value.caution}</p>`}`;
}

/** @param {any} props */
function Check({ check }) {
  return html`<li class=${'check ' + check.verdict.replace(' ', '-')}>
    <p class="head"><span class="word">${WORDS[check.verdict]}</span> <span class="value">${check.value_text}</span></p>
    <p class="what">${check.title}</p>
    ${check.where && html`<p class="where">${check.where}</p>`}
    <p class="limit">good ${check.good_text}; ${check.stop_text}. <span class="source">${check.source}</span></p>
    ${!looked.value && html`<${Remedy} check=${check} />`}
  </li>`;
}

/** What to change: options that upset nothing before a move that does. @param {any} props */
function Remedy({ check }) {
  const options = optionChanges.value;
  const together = options?.by_check[check.check];
  if (together) {
    const apply = () => change('Check "' + check.title + '"', options.edits[check.check].map((one) => ({ ...one, to: one.to ?? null })));
    return html`<p class="remedy">Tried${together.length > 1 ? ', together' : ''}:</p>
      <ul class="fields">${together.map((one) => html`<li key=${one.field}><code>${one.field}</code>: ${shown(at(one.field))} → <strong>${one.after}</strong></li>`)}</ul>
      <button class="main" onClick=${apply}>Change it so</button>`;
  }
  if (check.change) {
    const apply = () => set('Check "' + check.title + '": ' + check.change_text, Object.fromEntries(check.change.map((one) => [one.field, one.value])));
    return html`<p class="remedy">Tried: ${check.change_text}.${check.upsets_text && ' ' + check.upsets_text + '.'}</p>
      <ul class="fields">${check.change.map((one) => html`<li key=${one.field}><code>${one.field}</code>: ${shown(at(one.field))} → <strong>${one.value}</strong></li>`)}</ul>
      <button class="main" onClick=${apply}>Change it so</button>`;
  }
  const tried = options?.tried > 0 ? ', and of ' + options.tried + ' changes of options that were tried for all checks none does; Arrange searches further' : '';
  return html`<p class="remedy">No single change within reach makes it good${tried}.${check.advice ? ' ' + check.advice : ''}</p>`;
}

/** @param {any} value */
const shown = (value) => (value === undefined ? 'as proposed' : typeof value === 'object' ? JSON.stringify(value) : value);

/**
 * Parts that checks which are not good speak of, by their ids: those that are named, and those of a
 * bar, spring or shock that is.
 * @param {any[]} checks
 * @param {any[]} parts
 */
export function tight(checks, parts) {
  const named = new Map();
  for (const check of checks) {
    if (check.verdict !== 'stop' && check.verdict !== 'look again') continue;
    for (const part of parts) {
      const words = ['frame', 'axle'].includes(part.carrier) ? [part.id] : [part.id, part.carrier];
      if (!named.has(part.id) && words.some((word) => check.where?.includes(word))) named.set(part.id, check);
    }
  }
  return named;
}

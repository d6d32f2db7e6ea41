// @ts-check
/** Closing a job with the hours and the material that it really took. */
import { useEffect, useState } from 'preact/hooks';
import { get, jobPath, post } from './api.js';
import { html } from './html.js';
import { job, tell } from './state.js';

export function Close() {
  const [form, setForm] = useState(/** @type {any} */ (null));
  const [closed, setClosed] = useState(/** @type {any} */ (null));
  const [refused, setRefused] = useState('');
  const path = jobPath(job.value.file) + '/close';
  const revision = job.value.revision;
  useEffect(() => {
    get(path).then(setForm).catch((error) => setForm({ refused: error.message }));
  }, [path, revision]);
  if (!form) return html`<h2>Close</h2><p class="help">Working out …</p>`;
  if (form.refused) return html`<h2>Close</h2><p class="refusal">${form.refused}</p>`;
  const close = async (more) => {
    try {
      const answer = await post(path, more);
      setClosed(answer);
      setRefused('');
    } catch (error) {
      setRefused(/** @type {Error} */ (error).message);
    }
  };
  const anew = () => post(path + '/anew', {}).then(setForm).catch(tell);
  const filled = form.rows.some((one) => one.used.length > 0);
  return html`
    <h2>Close</h2>
    <p class="help">Enter what it really took; leave empty what nobody noted. The shop's hours learn from it, and later quotes with them. It is kept in ${form.form} beside the job, the form that <code>trammel close</code> reads.</p>
    ${form.old_form && html`<p class="problem">The plan has changed since this was begun. <button onClick=${anew}>Put it aside and begin anew</button></p>`}
    ${['hours', 'material'].map((kind) => html`<h3 key=${kind}>${kind === 'hours' ? 'Hours' : 'Material'}</h3>
      <table class="used"><thead><tr><th>what</th><th>planned</th><th>used</th></tr></thead><tbody>${form.rows.filter((one) => one.kind === kind).map((one) => html`<${Line} key=${one.item + one.what} line=${one} path=${path} took=${setForm} />`)}</tbody></table>`)}
    <p class="answers"><button class="main" disabled=${!filled || form.old_form} onClick=${() => close({})}>Close the job</button></p>
    ${refused && html`<div class="refusal" role="alert"><p>${refused}</p>
      <p class="answers">${refused.includes('--as-written') && html`<button onClick=${() => close({ as_written: true })}>The hours are right</button>`}
      ${refused.includes('--again') && html`<button onClick=${() => close({ again: true, as_written: true })}>Put these in their place</button>`}</p></div>`}
    ${closed && html`<section class="tacked" role="status"><p class="answer">closed</p>${closed.remarks.map((one) => html`<p>${one}</p>`)}<p>Job ${closed.closed.job}. Later quotes count with what it took.</p></section>`}`;
}

/** @param {any} props */
function Line({ line, path, took }) {
  const now = line.used.join('; ');
  const [typed, setTyped] = useState(now);
  const [wrong, setWrong] = useState('');
  useEffect(() => setTyped(now), [now]);
  const keep = async () => {
    const used = typed.trim() ? [typed.trim()] : [];
    if (used.join() === line.used.join()) return;
    try {
      took(await post(path + '/used', { kind: line.kind, item: line.item, what: line.what, from: line.used, used }));
      setWrong('');
    } catch (error) {
      setWrong(/** @type {Error} */ (error).message);
    }
  };
  return html`<tr><th scope="row">${line.what}${wrong && html`<p class="problem" role="alert">${wrong}</p>`}</th><td class="number">${line.planned} ${line.unit}</td><td><input aria-label=${'Used: ' + line.what} value=${typed} inputmode="decimal" autocomplete="off" onInput=${(event) => setTyped(event.target.value)} onBlur=${keep} onKeyDown=${(event) => event.key === 'Enter' && event.target.blur()} /></td></tr>`;
}

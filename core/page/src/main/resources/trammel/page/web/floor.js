// @ts-check
/** The fit-up sheet for a phone: set, tack, read, and hear at once what that says. */
import { useEffect, useState } from 'preact/hooks';
import { get, jobPath, post } from './api.js';
import { html } from './html.js';
import { job, judged, say, tell } from './state.js';

export function FitUp() {
  const [sheet, setSheet] = useState(/** @type {any} */ (null));
  const path = jobPath(job.value.file) + '/fitup';
  const revision = job.value.revision;
  useEffect(() => {
    get(path).then(setSheet).catch((error) => setSheet({ refused: error.message }));
  }, [path, revision]);
  if (!sheet) return html`<h2>Fit up</h2><p class="help">Working out where everything goes …</p>`;
  if (sheet.refused) return html`<h2>Fit up</h2><p class="refusal">${sheet.refused}</p>`;
  /** @type {Map<string, any[]>} */
  const brackets = new Map();
  for (const target of sheet.targets) brackets.set(target.bracket, [...(brackets.get(target.bracket) ?? []), target]);
  const anew = async () => {
    try {
      setSheet(await post(path + '/anew', {}));
    } catch (error) {
      tell(error);
    }
  };
  return html`
    <h2>Fit up</h2>
    ${judged.value?.stops?.length > 0 && html`<p class="refusal">STOP, to be solved before work begins: ${judged.value.stops.map((one) => one.words).join('; ')}</p>`}
    <p class="help">Mark first: the axle line on both rails, plumb above the wheel centres at ride; the body's centre line on the floor. Measure from these marks, never from one bracket to the next. Support frame and axle on rated stands before anything is cut.</p>
    ${sheet.old_form && html`<p class="problem">The plan has changed since readings were entered. <button onClick=${anew}>Put them aside and begin anew</button></p>`}
    <${Answer} tacked=${sheet.tacked} />
    <h3>Hold the axle at ride</h3>
    <table><tbody>${sheet.struts.map((one) => html`<tr key=${one.in_place_of}><th scope="row">strut in place of ${one.in_place_of}</th><td class="number">${one.length_text}</td></tr>`)}</tbody></table>
    <h3>Angle finder</h3>
    <div class="scroll" tabindex="0" role="region" aria-label="Angle finder"><table><thead><tr><th>what</th><th>on the stands</th><th>from the rail</th><th>at ride</th></tr></thead>
    <tbody>${sheet.angles.map((one) => html`<tr key=${one.what}><th scope="row">${one.what}</th>${['on_stands_deg', 'from_rail_deg', 'at_ride_deg'].map((key) => html`<td key=${key} class="number">${one[key].toFixed(1)} deg</td>`)}</tr>`)}</tbody></table></div>
    ${[...brackets].map(([name, targets]) => html`<${Bracket} key=${name} name=${name} targets=${targets} path=${path} took=${setSheet} again=${sheet.tacked?.measure_again ?? []} signed=${sheet.signed.find((one) => one.bracket === name)} />`)}
    <p class="help">Readings are kept in ${sheet.form} beside the job, the form that <code>trammel tacked</code> reads.</p>`;
}

/** @param {any} props */
function Answer({ tacked }) {
  if (!tacked) return null;
  return html`<section class=${'tacked' + (tacked.stops.length ? ' stop' : '')} role="status">
    <p class="answer">${tacked.answer}</p>
    ${tacked.reasons.map((one) => html`<p>${one}</p>`)}
    ${tacked.re_set_text.length > 0 && html`<ul class="plain">${tacked.re_set_text.map((one) => html`<li><strong>${one}</strong></li>`)}</ul>`}
    <p class="caution">${tacked.caution}</p>
  </section>`;
}

/** @param {any} props */
function Bracket({ name, targets, path, took, again, signed }) {
  const open = targets.filter((one) => one.readings.length === 0).length;
  return html`<section class="bracket"><h3>${name} <span class="state">${open === 0 ? 'all read' : open + ' to read'}</span></h3>
    ${targets.map((one) => html`<${Target} key=${one.target} target=${one} path=${path} took=${took} again=${again.find((other) => other.target === one.target)} />`)}
    ${signed && html`<${Sign} name=${name} signed=${signed} path=${path} took=${took} />`}</section>`;
}

const SIGNER = 'trammel.signer';

/** @param {any} props */
function Sign({ name, signed, path, took }) {
  const [by, setBy] = useState(localStorage.getItem(SIGNER) ?? '');
  const send = async (who) => {
    try {
      took(await post(path + '/sign', { bracket: name, by: who }));
      if (who) localStorage.setItem(SIGNER, who);
      say(who ? name + ' is signed off' : name + ' is no longer signed off');
    } catch (error) {
      tell(error);
    }
  };
  const id = 'by-' + name.replaceAll(/[^a-z0-9]+/gi, '-');
  if (signed.by && signed.holds) return html`<p class="signed"><strong>Signed off</strong> by ${signed.by}, ${signed.on} <button class="small" aria-label=${'Take back: ' + name} onClick=${() => send('')}>Take it back</button></p>`;
  return html`<div class="signing">
    ${signed.by && html`<p class="problem">${signed.by} signed on ${signed.on} for other readings.</p>`}
    ${signed.not_yet ? html`<p class="help">Not to be signed off yet: ${signed.not_yet}.</p>` : html`<label for=${id}>Name</label><input id=${id} value=${by} maxlength="60" autocomplete="off" onInput=${(event) => setBy(event.target.value)} /><button class="main" disabled=${!by.trim()} aria-label=${'Sign off ' + name} onClick=${() => send(by.trim())}>Sign off</button>`}
  </div>`;
}

/** @param {any} props */
function Target({ target, path, took, again }) {
  const now = target.readings.join('; ');
  const [typed, setTyped] = useState(now);
  const [wrong, setWrong] = useState('');
  useEffect(() => setTyped(now), [now]);
  const id = 't-' + target.target.replaceAll(/[^a-z0-9]+/gi, '-');
  const keep = async () => {
    const readings = typed.split(';').map((one) => one.trim()).filter(Boolean);
    if (readings.join('; ') === now) return;
    try {
      const sheet = await post(path, { target: target.target, from: target.readings, readings });
      setWrong('');
      took(sheet);
      if (sheet.not_kept) tell(new Error(sheet.not_kept));
      else if (sheet.tacked) say(sheet.tacked.answer);
    } catch (error) {
      setWrong(/** @type {any} */ (error).json?.problems?.[0] ? words(/** @type {any} */ (error).json.problems[0]) : /** @type {Error} */ (error).message);
    }
  };
  return html`<div class=${'target' + (wrong ? ' wrong' : '')}>
    <label for=${id}><strong class="set">${target.set_to_text}</strong> <span class="within">within ${target.within_text}</span><span class="what">${target.what}</span></label>
    <input id=${id} value=${typed} placeholder="reading" autocomplete="off" inputmode="text" aria-describedby=${id + '-more'} onInput=${(event) => setTyped(event.target.value)} onBlur=${keep} onKeyDown=${(event) => event.key === 'Enter' && event.target.blur()} />
    <p id=${id + '-more'} class="problem">${wrong || (again && now ? 'Measure again: ' + again.why : '')}</p>
  </div>`;
}

const words = (one) => 'Given ' + one.given + '; allowed: ' + one.allowed + '. ' + one.remedy;

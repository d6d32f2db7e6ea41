// @ts-check
/** Searching for layouts that pass every check; its answers as cards to look at and to take. */
import { useEffect, useState } from 'preact/hooks';
import { get, jobPath, post } from './api.js';
import { html } from './html.js';
import { change, go, job, judged, preview, previewed, tell } from './state.js';
import { hours, money } from './units.js';

const LOOK_EVERY_MS = 700;
const GOALS = { price: 'the lowest price', hours: 'the fewest hours', margin: 'the widest margins', ride: 'the best ride' };
const KEPT = [
  ['chosen.linkage', 'the linkage'],
  ['chosen.spring', 'the springs'],
  ['chosen.ride', 'ride height and travel'],
];

export function Arrange() {
  const [now, setNow] = useState(/** @type {any} */ (null));
  const [goal, setGoal] = useState('price');
  const [keep, setKeep] = useState(/** @type {string[]} */ ([]));
  const path = jobPath(job.value.file) + '/arrange';
  const revision = job.value.revision;
  useEffect(() => {
    get(path).then(setNow).catch(tell);
  }, [path, revision]);
  useEffect(() => {
    if (!now?.running) return;
    const next = setTimeout(() => get(path).then(setNow).catch(tell), LOOK_EVERY_MS);
    return () => clearTimeout(next);
  }, [now, path]);
  useEffect(() => () => preview(null), []);
  if (!now) return html`<h2>Arrange</h2><p class="help">…</p>`;
  const begin = () => post(path, { for: goal, keep }).then(setNow).catch(tell);
  const found = now.found;
  return html`
    <h2>Arrange</h2>
    <p class="help">Searches over linkages, springs and their options for layouts that pass every check. Points that the job sets itself stay. Each answer is a list of changes with the check that asked for it; nothing is changed until you take one.</p>
    ${now.running
      ? html`<div class="progress" role="status"><p><strong>${now.tried}</strong> of ${now.effort} layouts tried, ${now.passing} kinds pass</p><progress max=${now.effort} value=${now.tried} aria-label="Layouts tried"></progress><p class="answers"><button onClick=${() => post(path + '/stop', {}).then(setNow).catch(tell)}>End it with the best so far</button></p></div>`
      : html`<div class="asking"><label for="goal">Look for</label><select id="goal" onChange=${(event) => setGoal(event.target.value)}>${now.goals.map((one) => html`<option key=${one} value=${one} selected=${one === goal}>${GOALS[one] ?? one}</option>`)}</select>
        <p>Keep as it is: ${KEPT.map(([field, title]) => html`<label key=${field} class="kept"><input type="checkbox" checked=${keep.includes(field)} onChange=${(event) => setKeep(event.target.checked ? [...keep, field] : keep.filter((one) => one !== field))} /> ${title}</label>`)}</p>
        <p class="answers"><button class="main" onClick=${begin}>${found ? 'Search again' : 'Search'}</button></p></div>`}
    ${now.refused && html`<p class="refusal">${now.refused}</p>`}
    ${found && now.old && html`<p class="problem">The job has changed since this search: its answers start from how it stood.</p>`}
    ${found && !found.passes && html`<p class="refusal">No layout passes every check. The nearest are below${found.conflict ? '; what remains: ' + found.conflict.remaining.join('; ') : ''}.</p>`}
    ${found?.conflict?.ways.map((way, i) => html`<div key=${i} class="way"><p>What would let one pass${found.conflict.ways.length > 1 ? ', ' + (i + 1) : ''}:</p><${Changes} changes=${way} /></div>`)}
    ${found?.layouts.map((layout, i) => html`<${Layout} key=${i} layout=${layout} edits=${now.edits[i]} currency=${now.currency} old=${now.old} number=${i + 1} />`)}
    ${found?.remarks.map((one) => html`<p class="help">${one}</p>`)}`;
}

/** @param {any} props */
function Layout({ layout, edits, currency, old, number }) {
  const looking = previewed.value === edits;
  const difference = judged.value?.price ? layout.total - judged.value.price.total : 0;
  const take = async () => {
    preview(null);
    if (await change('Take layout ' + number + ': ' + layout.kind, edits.map((one) => ({ ...one, to: one.to ?? null })))) go(job.value.file, 'checks');
  };
  return html`<article class="layout">
    <h3>${number}. ${layout.kind}</h3>
    <p class="figures"><strong>${money(layout.total, currency)}</strong> with tax${difference ? html`, ${difference > 0 ? '+' : ''}${money(difference, currency)} against the job` : ''}; ${hours(layout.mean_h)} mean</p>
    <p>${layout.stop} STOP, ${layout.look_again} look again. Within the tolerances of what was measured ${Math.round(100 * layout.no_stop_share)} of 100 such vehicles have no STOP.</p>
    <${Changes} changes=${layout.changes} />
    <p class="answers"><button aria-pressed=${looking} onClick=${() => preview(looking ? null : edits)}>Look at it in the drawing</button> <button class="main" disabled=${old || edits.length === 0} onClick=${take}>Take it</button></p>
  </article>`;
}

/** @param {any} props */
function Changes({ changes }) {
  return changes.length === 0
    ? html`<p class="help">The job as it stands.</p>`
    : html`<ul class="fields">${changes.map((one) => html`<li key=${one.field}><code>${one.field}</code>: ${one.before ?? 'as proposed'} → <strong>${one.after}</strong> <span class="how">${one.reason}</span></li>`)}</ul>`;
}

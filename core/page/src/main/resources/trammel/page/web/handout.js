// @ts-check
/** What the job hands out: to the customer, the office, the floor and the machines. */
import { useState } from 'preact/hooks';
import { jobPath, post } from './api.js';
import { html } from './html.js';
import { job, judged, tell } from './state.js';

const GROUPS = [
  ['customer', 'To the customer'],
  ['office', 'To the office'],
  ['floor', 'To the floor'],
  ['drawings', 'Drawings'],
  ['', 'To saw and cutting table'],
];
const TITLES = {
  'customer/quote': 'Quote',
  'office/cost-sheet': 'Cost sheet',
  'office/material-order': 'Material order',
  'floor/floor-packet': 'Floor packet',
  'floor/cut-lists': 'Cut lists',
  'floor/as-built-record': 'As-built record',
  'floor/measuring-sheet': 'Measuring sheet, empty',
  'floor/true-scale': 'Templates, true scale',
  'floor/fitup': 'Fit-up form',
  'drawings/travel': 'Curves through the travel',
  'drawings/views': 'All views on paper',
};
const SHOWN = ['html', 'svg', 'png'];

export function HandOut() {
  const [papers, setPapers] = useState(/** @type {any} */ (null));
  const [making, setMaking] = useState(false);
  const [seen, setSeen] = useState('');
  const [written, setWritten] = useState('');
  if (judged.value?.refused || judged.value?.no_price) {
    return html`<h2>Hand out</h2><p class="refusal">${judged.value.refused ?? judged.value.no_price}</p>`;
  }
  const make = async () => {
    setMaking(true);
    try {
      setPapers(await post(jobPath(job.value.file) + '/handout', {}));
      setWritten('');
    } catch (error) {
      tell(error);
    } finally {
      setMaking(false);
    }
  };
  const write = async () => {
    try {
      const done = await post(jobPath(job.value.file) + '/handout/write', {});
      setWritten('Wrote ' + done.files + ' files to ' + done.folder + '. ' + done.remarks.join(' '));
    } catch (error) {
      tell(error);
    }
  };
  const old = papers && papers.revision !== job.value.revision;
  return html`
    <h2>Hand out</h2>
    <p class="help">The same papers as <code>trammel quote --out</code> writes: the customer's quote, the shop's cost sheet, the order, the floor packet, templates and what saw and cutting table need.</p>
    ${judged.value?.stops?.length > 0 && html`<p class="refusal">STOP stands on every paper until it is solved: ${judged.value.stops.map((one) => one.words).join('; ')}</p>`}
    <p class="answers"><button class="main" disabled=${making} onClick=${make}>${making ? 'Drawing and setting …' : papers ? 'Make them again' : 'Make the papers'}</button>
    ${papers && !old && html` <button onClick=${write}>Write all into the folder</button>`}</p>
    ${written && html`<p role="status">${written}</p>`}
    ${old && html`<p class="problem">The job has changed since these were made.</p>`}
    ${papers && papers.remarks.map((one) => html`<p class="help">${one}</p>`)}
    ${papers && GROUPS.map(([group, title]) => html`<${Group} key=${group} papers=${papers} group=${group} title=${title} seen=${seen} see=${setSeen} />`)}
    ${seen && html`<section class="paper" aria-label="Paper"><p class="answers"><button onClick=${() => setSeen('')}>Close the paper</button></p><iframe title=${name(seen)} src=${address(papers, seen)} sandbox=""></iframe></section>`}`;
}

/** Of one document in several forms, one line. */
function stem(file) {
  return file.replace(/\.[a-z]+$/, '');
}

const ending = (file) => file.slice(file.lastIndexOf('.') + 1);
const name = (file) => TITLES[stem(file)] ?? stem(file).split('/').at(-1).replaceAll('-', ' ');
const address = (papers, file) => '/paper/' + papers.ticket + '/' + encodeURIComponent(file);

/** @param {any} props */
function Group({ papers, group, title, seen, see }) {
  const known = GROUPS.map(([one]) => one).filter(Boolean);
  const files = papers.files.map((one) => one.name).filter((one) => (group ? one.startsWith(group + '/') : !known.some((other) => one.startsWith(other + '/'))));
  if (files.length === 0) return null;
  /** @type {Map<string, string[]>} */
  const stems = new Map();
  for (const file of files) stems.set(stem(file), [...(stems.get(stem(file)) ?? []), file]);
  const rows = html`<ul class="papers">${[...stems.values()].map((forms) => {
    const show = forms.find((one) => SHOWN.includes(ending(one)));
    return html`<li key=${forms[0]}><span class="title">${name(forms[0])}</span>
      ${show && html`<button class="small" aria-pressed=${seen === show} aria-label=${'See ' + name(show)} onClick=${() => see(show)}>See</button>`}
      ${forms.map((one) => html`<a key=${one} class="file" href=${address(papers, one) + (ending(one) === 'pdf' ? '' : '?save=1')} target=${ending(one) === 'pdf' ? '_blank' : undefined} rel="noopener" aria-label=${name(one) + ', ' + ending(one)}>${ending(one).toUpperCase()}</a>`)}</li>`;
  })}</ul>`;
  return group === '' ? html`<details class="group"><summary>${title} (${files.length} files)</summary>${rows}</details>` : html`<section><h3>${title}</h3>${rows}</section>`;
}

// @ts-check
/** The folder of jobs. */
import { useState } from 'preact/hooks';
import { html } from './html.js';
import { create, go, shop } from './state.js';

const STATES = { ready: 'measured', open: 'not finished', broken: 'cannot be read' };

export function Folder() {
  const { jobs, folder, lan, code, version } = shop.value;
  const [naming, setNaming] = useState(/** @type {any} */ (null));
  return html`
    <header class="head"><h1>Trammel</h1><p class="where">jobs in ${folder}</p></header>
    <main class="folder">
      ${jobs.length === 0 && html`<p class="empty">No job is in this folder yet. Begin with the tape: a new job asks for one measurement after the other and can be left at any time.</p>`}
      <ul class="jobs">
        ${jobs.map((job) => html`<li key=${job.file}><${Card} job=${job} copy=${() => setNaming({ from: job.file, file: 'copy of ' + job.file })} /></li>`)}
      </ul>
      ${naming
        ? html`<${Name} naming=${naming} done=${() => setNaming(null)} />`
        : html`<p class="answers"><button class="main big" onClick=${() => setNaming({ file: '' })}>New job</button> <button class="big" onClick=${() => (location.hash = 'order=jobs')}>Order</button> <button class="big" onClick=${() => (location.hash = 'book=jobs')}>The book</button> <button class="big" onClick=${() => (location.hash = 'shop=shop')}>The shop</button></p>`}
      ${lan && html`<p class="lan">Other devices in the shop's network are asked for the code <strong>${code}</strong>, good for ten minutes. The line is not encrypted.</p>`}
      <p class="caution">Trammel plans and estimates. It does not approve a design, a weld or a vehicle. Version ${version}.</p>
    </main>`;
}

/** @param {any} props */
function Card({ job, copy }) {
  const broken = job.state === 'broken';
  return html`<article class=${'card ' + job.state}>
    <button class="open" disabled=${broken} onClick=${() => go(job.file, job.state === 'open' ? 'measure' : 'see')}>
      <span class="number">${job.number || job.file}</span>
      <span class="vehicle">${job.vehicle}</span>
      <span class="customer">${[job.customer, job.date, job.file].filter(Boolean).join(' · ')}</span>
    </button>
    <p class="state">${STATES[job.state]}${job.state === 'open' ? ': ' + job.problems + ' to do' : ''}</p>
    ${broken ? html`<p class="problem">${job.why}</p>` : html`<button class="small" onClick=${copy}>Copy …</button>`}
  </article>`;
}

/** @param {any} props */
function Name({ naming, done }) {
  /** @param {any} event */
  const make = async (event) => {
    event.preventDefault();
    let file = event.target.elements.file.value.trim();
    if (!/\.(yaml|yml|json)$/i.test(file)) file += '.yaml';
    if (await create(file, naming.from)) done();
  };
  return html`<form class="naming" onSubmit=${make}>
    <label for="file">${naming.from ? 'Copy ' + naming.from + ' as' : 'Name of the new job file'}</label>
    <input id="file" name="file" required value=${naming.file} maxlength="100" autocomplete="off" ref=${(one) => one?.focus()} />
    <p class="help">Such as <code>smith-pickup</code>. It becomes a file in this folder.</p>
    <button class="main">${naming.from ? 'Copy' : 'Begin'}</button>
    <button type="button" onClick=${done}>Leave it</button>
  </form>`;
}

// @ts-check
/** One job: the drawing, and beside it what is being done. */
import { html } from './html.js';
import { Arrange } from './arrange.js';
import { Change } from './change.js';
import { Checks } from './checks.js';
import { Close } from './close.js';
import { Drawing } from './drawing.js';
import { FitUp } from './floor.js';
import { HandOut } from './handout.js';
import { Measure } from './measure.js';
import { Price } from './price.js';
import { See } from './see.js';
import { Terms } from './terms.js';
import { Tray } from './tray.js';
import { counts, go, job, judged, looked, missing, problems, step, tab } from './state.js';
import { hours, money } from './units.js';

/** @type {[string, string, any][]} */
export const TABS = [
  ['measure', 'Measure', Measure],
  ['see', 'See', See],
  ['change', 'Change', Change],
  ['arrange', 'Arrange', Arrange],
  ['checks', 'Checks', Checks],
  ['price', 'Price', Price],
  ['terms', 'Terms', Terms],
  ['tray', 'Tray', Tray],
  ['handout', 'Hand out', HandOut],
  ['fitup', 'Fit up', FitUp],
  ['close', 'Close', Close],
];

export function Job() {
  const { file, document: written } = job.value;
  const [key, , Panel] = TABS.find(([one]) => one === tab.value) ?? TABS[1];
  const header = written?.job ?? {};
  return html`
    <header class="head">
      <button class="back" onClick=${() => go('')}>Jobs</button>
      <h1>${header.number ?? file}</h1>
      <p class="where">${[header.vehicle, header.customer].filter(Boolean).join(' · ')}</p>
      <p class="steps">
        <button disabled=${!job.value.undo} title=${job.value.undo ?? ''} onClick=${() => step('undo')}>Take back</button>
        <button disabled=${!job.value.redo} title=${job.value.redo ?? ''} onClick=${() => step('redo')}>Do again</button>
      </p>
    </header>
    <${Verdict} />
    <nav class="tabs" aria-label="What to do with the job">
      ${TABS.map(([one, title]) => html`<button key=${one} aria-current=${one === key ? 'page' : undefined} ref=${(button) => one === key && button?.parentElement && inSight(button)} onClick=${() => go(file, one)}>${title}</button>`)}
    </nav>
    <main class=${'work at-' + key}>
      <section class="sheet" aria-label="Drawing"><${Drawing} /></section>
      <section class="panel" aria-label=${TABS.find(([one]) => one === key)?.[1]}><${Panel} /></section>
    </main>`;
}

/** On a narrow screen the tabs are a strip. */
function inSight(button) {
  const strip = button.parentElement;
  strip.scrollLeft = button.offsetLeft - (strip.clientWidth - button.offsetWidth) / 2;
}

/** The figures that are always in sight. */
function Verdict() {
  const price = judged.value?.price;
  const count = counts.value;
  const open = [...problems.value.values()].flat().filter((one) => one.severity === 'error').length;
  const live = looked.value?.checks ? ' live' : '';
  if (open > 0 && !judged.value?.checks?.length) {
    const count = Math.max(open, missing.value.size);
    return html`<div class="verdict"><p class="figure"><strong>${count}</strong> to measure or to mend</p></div>`;
  }
  if (judged.value?.refused && !judged.value.checks.length) {
    return html`<div class="verdict stop"><p class="refusal" tabindex="0">${judged.value.refused}</p></div>`;
  }
  return html`<div class=${'verdict' + live + (count.stop ? ' stop' : '')} aria-live="off">
    <p class="figure stops"><strong>${count.stop}</strong> STOP</p>
    <p class="figure"><strong>${count['look again']}</strong> look again</p>
    <p class="figure"><strong>${count.good}</strong> good</p>
    <p class="figure hours">${judged.value?.hours ? html`<strong>${hours(judged.value.hours.mean_h)}</strong> mean` : ''}</p>
    <p class="figure price">${price ? html`<strong>${money(price.total, price.currency)}</strong> with tax` : judged.value?.no_price ? 'no price' : ''}</p>
  </div>`;
}

// @ts-check
/** The price, every figure of which opens to how it came about; the hours with their odds. */
import { useState } from 'preact/hooks';
import { get, jobPath } from './api.js';
import { html } from './html.js';
import { job, judged, tell } from './state.js';
import { hours, money } from './units.js';

export function Price() {
  const now = judged.value;
  if (!now) return html`<p class="help">Working out …</p>`;
  if (now.refused) return html`<p class="refusal">${now.refused}</p>`;
  if (now.no_price) return html`<h2>No price</h2><p class="refusal">${now.no_price}</p>`;
  const { price } = now;
  /** @type {Map<string, any[]>} */
  const classes = new Map();
  for (const line of price.lines) classes.set(line.class, [...(classes.get(line.class) ?? []), line]);
  const cash = (amount) => money(amount, price.currency);
  return html`
    <h2>Price</h2>
    <p class="total"><${Why} line="total" title="price with tax" amount=${cash(price.total)} /></p>
    <div class="sums">
      <${Why} line="subtotal" title="before tax" amount=${cash(price.subtotal)} />
      <${Why} line="tax" title=${price.tax_name} amount=${cash(price.tax)} />
      <${Why} line="deposit" title="deposit with the order" amount=${cash(price.deposit)} />
      ${price.progress.map((one, i) => html`<${Why} key=${i} line=${'payment-' + (i + 1)} title=${one.at} amount=${cash(one.amount)} />`)}
      <${Why} line="balance" title="balance on delivery" amount=${cash(price.balance)} />
    </div>
    <p class="help">Valid for ${price.valid_days} days. Press a figure to see how it came about.</p>
    <h3>Hours</h3>
    <div class="odds">
      <p><strong>${hours(now.hours.p50_h)}</strong> half the jobs</p>
      <p><strong>${hours(now.hours.mean_h)}</strong> mean</p>
      <p><strong>${hours(now.hours.p80_h)}</strong> eight of ten</p>
    </div>
    ${[...classes].map(([name, lines]) => html`<section key=${name} class="class">
      <h3>${name} <span class="number">${cash(lines.reduce((sum, line) => sum + Math.round(line.price * 100), 0) / 100)}</span></h3>
      ${lines.map((line) => html`<${Why} key=${line.line} line=${line.line} title=${line.title} how=${line.quantity} amount=${cash(line.price)} />`)}
    </section>`)}
    ${now.remarks.map((one) => html`<p class="help">${one}</p>`)}
    ${now.assumptions.length > 0 && html`<details><summary>Taken because the job says nothing (${now.assumptions.length})</summary><ul class="plain">${now.assumptions.map((one) => html`<li>${one}</li>`)}</ul></details>`}
    <p class="caution">${now.caution}</p>`;
}

/** @param {any} props */
function Why({ line, title, amount, how }) {
  const [steps, setSteps] = useState(/** @type {any} */ (null));
  const revision = job.value.revision;
  const open = async (event) => {
    if (!event.target.open || steps?.revision === revision) return;
    try {
      const answer = await get(jobPath(job.value.file) + '/why?line=' + encodeURIComponent(line));
      setSteps({ revision, why: answer.why });
    } catch (error) {
      tell(error);
    }
  };
  return html`<details class="why" onToggle=${open}>
    <summary><span class="title">${title}${how && html` <span class="how">${how}</span>`}</span> <span class="number">${amount}</span></summary>
    ${(steps?.why ?? []).slice(0, 1).map((one) => html`<ol>${one.steps.map((step) => html`<li><span>${step.step}</span> <span class="number">${step.figure ?? ''}</span></li>`)}</ol>`)}
  </details>`;
}

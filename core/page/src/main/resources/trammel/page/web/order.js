// @ts-check
/** One order over several jobs, with what is on the rack. */
import { useState } from 'preact/hooks';
import { post } from './api.js';
import { html } from './html.js';
import { busy, shop, tell } from './state.js';
import { money } from './units.js';

export function Order() {
  const jobs = shop.value.jobs.filter((one) => one.state === 'ready');
  const [chosen, setChosen] = useState(/** @type {string[]} */ ([]));
  const [rack, setRack] = useState(true);
  const [made, setMade] = useState(/** @type {any} */ (null));
  const [refused, setRefused] = useState('');
  const ask = async (more) => {
    busy.value++;
    try {
      setMade(await post('/api/order', { jobs: chosen, rack, ...more }));
      setRefused('');
    } catch (error) {
      setMade(null);
      setRefused(/** @type {Error} */ (error).message);
      tell(error);
    } finally {
      busy.value--;
    }
  };
  const choose = (file, on) => {
    setChosen((now) => (on ? [...now.filter((one) => one !== file), file] : now.filter((one) => one !== file)));
    setMade(null);
  };
  const stops = made?.order.stops ?? [];
  return html`
    <header class="head"><button class="back" onClick=${() => (location.hash = '')}>Jobs</button><h1>Order</h1><p class="where">for several jobs at once: cut together, bought together</p></header>
    <main class="folder order">
      <fieldset class="group"><legend>Jobs</legend>
        ${jobs.length === 0 && html`<p class="help">No job is measured yet.</p>`}
        ${jobs.map((one) => html`<label key=${one.file} class="together"><input type="checkbox" checked=${chosen.includes(one.file)} onChange=${(event) => choose(one.file, event.target.checked)} /> <strong>${one.number || one.file}</strong> ${one.vehicle}</label>`)}
      </fieldset>
      <label class="together"><input type="checkbox" checked=${rack} onChange=${(event) => { setRack(event.target.checked); setMade(null); }} /> use what is <a href="#shop=stock">on the rack</a> first</label>
      <p class="answers"><button class="main" disabled=${chosen.length === 0} onClick=${() => ask({})}>Work the order out</button></p>
      ${refused && html`<p class="refusal" role="alert">${refused}</p>`}
      ${made && html`<section aria-label="Order" role="status">
        ${stops.length > 0 && html`<p class="refusal">STOP: ${stops.map((one) => one.words).join('; ')}</p>`}
        ${made.order.suppliers.map((one) => html`<${Supplier} key=${one.supplier} one=${one} />`)}
        ${made.order.suppliers.length === 0 && html`<p>Nothing to buy: all of it is on the rack.</p>`}
        <${Rack} title="From the rack" lines=${made.order.from_rack} />
        <${Rack} title="Back to the rack, paint the name on" lines=${made.order.back_to_rack} />
        ${made.order.total !== undefined && html`<p class="total"><strong>${money(made.order.total, made.order.suppliers[0]?.currency ?? 'USD')}</strong> together, before tax</p>`}
        ${made.remarks.map((one) => html`<p class="help">${one}</p>`)}
        ${made.placed ? html`<p class="done">In the folder <code>${made.folder}</code> are the papers.</p>` : html`<p class="answers"><button class="main" onClick=${() => ask({ place: true, anyway: stops.length > 0 })}>${stops.length > 0 ? 'Place it anyway' : 'Place it'}</button></p><p class="help">Writes the order into the folder <code>${made.folder}</code>, keeps it in the ledger${rack ? ', and takes what is used off the rack' : ''}.</p>`}
      </section>`}
    </main>`;
}

/** @param {any} props */
function Supplier({ one }) {
  const cash = (amount) => money(amount, one.currency);
  return html`<h3>${one.supplier} <span class="number">${cash(one.total)}</span></h3>
    <p class="help">there on ${one.there}${one.order_by ? ', order by ' + one.order_by : ''}</p>
    <div class="scroll" tabindex="0" role="region" aria-label=${'Order from ' + one.supplier}><table><tbody>
      ${one.lines.map((line) => html`<tr key=${line.item + line.title}><td class="number">${line.quantity}</td><td>${line.unit}</td><th scope="row">${line.title}</th><td class="number">${cash(line.amount)}</td></tr>`)}
      ${one.charges.map((line) => html`<tr key=${line.title}><td></td><td></td><th scope="row">${line.title}</th><td class="number">${cash(line.amount)}</td></tr>`)}
    </tbody></table></div>
    ${one.remarks.map((words) => html`<p class="problem warning">${words}</p>`)}`;
}

const Rack = ({ title, lines }) => lines.length > 0 && html`<h3>${title}</h3><ul class="plain">${lines.map((one) => html`<li key=${one}>${one}</li>`)}</ul>`;

// @ts-check
/** The shop's book: what was quoted, changed, promised, paid, ordered and priced, and when. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { callMe, get, myName, post } from './api.js';
import { html } from './html.js';
import { atBook, bookOf, busy, go, say, shop, shopChanged, tell } from './state.js';
import { hours, money } from './units.js';

/** @type {[string, string][]} */
const PARTS = [
  ['jobs', 'Jobs'],
  ['goods', 'Goods'],
  ['prices', 'Prices'],
];

const two = (n) => String(n).padStart(2, '0');
const dayOf = (date) => date.getFullYear() + '-' + two(date.getMonth() + 1) + '-' + two(date.getDate());

/** When something was written down, by the clock of this device. @param {string} at */
const moment = (at) => {
  const date = new Date(at);
  return Number.isNaN(date.getTime()) ? at : dayOf(date) + ' ' + two(date.getHours()) + ':' + two(date.getMinutes());
};

/** When and by whom. @param {{ written: string, who: string }} one */
const signed = (one) => moment(one.written) + (one.who ? ' by ' + one.who : '');

/** Whoever is at this screen signs with it what goes into the ledger. */
function Name() {
  return html`<p class="seek"><label for="who">Your name, under what you write from this screen</label> <input id="who" autocomplete="off" maxlength="60" defaultValue=${myName()} onChange=${(event) => callMe(event.target.value)} /></p>`;
}

/** How many, without the places that the ledger keeps. */
const count = (number) => String(Number(number));
const today = () => dayOf(new Date());
const cash = (amount, currency) => money(Number(amount), currency ?? 'USD');
const more = (amount, currency) => (Number(amount) > 0 ? '+' : '') + cash(amount, currency);

/** @param {string} part @param {string} [of] */
function turn(part, of) {
  const words = new URLSearchParams({ book: part });
  if (of) words.set('of', of);
  location.hash = words.toString();
}

/**
 * What the server says, asked anew when the ledger has changed.
 * @param {string} path
 * @returns {[any, (now: any) => void]}
 */
function useAnswer(path) {
  const [answer, setAnswer] = useState(/** @type {any} */ (null));
  useEffect(() => {
    const stop = new AbortController();
    busy.value++;
    get(path, stop.signal).then((now) => setAnswer({ path, now }), tell).finally(() => busy.value--);
    return () => stop.abort();
  }, [path, shopChanged.value]);
  return [answer?.path === path ? answer.now : null, (now) => setAnswer({ path, now })];
}

/**
 * Writes something into the book.
 * @param {string} path
 * @param {any} what
 * @param {string} told
 */
async function enter(path, what, told) {
  busy.value++;
  try {
    const now = await post(path, what);
    say(told);
    return now;
  } catch (error) {
    tell(error);
    return null;
  } finally {
    busy.value--;
  }
}

export function Book() {
  const part = atBook.value ?? 'jobs';
  return html`
    <header class="head">
      <button class="back" onClick=${() => (location.hash = '')}>Jobs</button>
      <h1>The book</h1>
      <p class="where">what was quoted, changed, promised, paid, ordered and priced, as the ledger has it</p>
    </header>
    <nav class="tabs" aria-label="Parts of the book">
      ${PARTS.map(([one, title]) => html`<button key=${one} aria-current=${one === part ? 'page' : undefined} onClick=${() => turn(one)}>${title}</button>`)}
    </nav>
    <main class="folder book">
      ${part === 'prices' ? html`<${Prices} />` : part === 'goods' ? html`<${Goods} />` : bookOf.value ? html`<${Course} key=${bookOf.value} number=${bookOf.value} />` : html`<${Jobs} />`}
      ${part !== 'prices' && html`<${Name} />`}
    </main>`;
}

/** @param {any} props */
const Scroll = ({ of, children }) => html`<div class="scroll" tabindex="0" role="region" aria-label=${of}><table>${children}</table></div>`;

function Jobs() {
  const [book] = useAnswer('/api/book');
  if (!book) return html`<p class="help">Looking it up …</p>`;
  return html`<h2>Jobs that were quoted</h2>
    ${book.jobs.length === 0
      ? html`<p class="help">No job was quoted yet: <code>trammel book quote JOB</code> keeps the quote of a job, and from then on its course is here.</p>`
      : html`<${Scroll} of="Jobs that were quoted">
          <thead><tr><th>job</th><th>customer</th><th>state</th><th class="number">comes to</th><th class="number">paid</th><th class="number">left</th></tr></thead>
          <tbody>${book.jobs.map((one) => html`<tr key=${one.job}>
            <th scope="row"><button class="link" onClick=${() => turn('jobs', one.job)}>${one.job}</button></th>
            <td>${one.customer || 'deleted'}<br />${one.vehicle}</td><td>${one.state}</td>
            <td class="number">${one.total === undefined ? '' : cash(one.total, one.currency)}</td>
            <td class="number">${one.paid === undefined ? '' : cash(one.paid, one.currency)}</td>
            <td class="number">${one.left === undefined ? '' : cash(one.left, one.currency)}</td></tr>`)}</tbody>
        <//>`}`;
}

/** @param {any} props */
function Course({ number }) {
  const [course, setCourse] = useAnswer('/api/book/job?number=' + encodeURIComponent(number));
  if (!course) return html`<p class="help">Looking it up …</p>`;
  const file = shop.value?.jobs.find((one) => one.number === number)?.file;
  const amount = (value) => cash(value, course.currency);
  return html`
    <p class="answers"><button class="small" onClick=${() => turn('jobs')}>All jobs</button>${file && html` <button class="small" onClick=${() => go(file)}>Open the job</button>`}</p>
    <h2>${number}: ${course.state}</h2>
    <p>${[course.customer || 'The customer’s data was deleted', course.vehicle].filter(Boolean).join(' · ')}</p>
    ${course.agreed !== undefined && html`<p class="total"><strong>${amount(course.left)}</strong> left of ${amount(course.agreed)}${course.next_payment ? '; next ' + amount(course.next_payment.amount) + ' ' + course.next_payment.at : ''}</p>`}
    <h3>Quotes and change orders</h3>
    ${course.offers.map((one, i) => html`<${Offer} key=${one.number} one=${one} replaced=${one.kind === 'quote' && course.offers.slice(i + 1).some((later) => later.kind === 'quote' && !later.taken_back)} amount=${amount} currency=${course.currency} />`)}
    <h3>Stages</h3>
    <${Stages} course=${course} />
    <h3>Payments</h3>
    <${Payments} course=${course} amount=${amount} took=${setCourse} />
    ${course.tackings.length > 0 && html`<h3>Tacked</h3><${Tackings} tackings=${course.tackings} />`}
    ${course.orders.length > 0 && html`<h3>Goods</h3>`}
    ${course.orders.map((one) => html`<${Order} key=${one.order} order=${one} heading="h4" />`)}
    ${course.invoice && html`<h3>Invoice ${course.invoice.number} of ${course.invoice.date}</h3>
      <${Scroll} of="Invoice"><tbody>
        ${course.invoice.lines.map((line) => html`<tr key=${line.title}><th scope="row">${line.title}</th><td class="number">${amount(line.amount)}</td></tr>`)}
        <tr><th scope="row">paid before</th><td class="number">${amount(course.invoice.paid)}</td></tr>
        <tr><th scope="row">left to pay then</th><td class="number">${amount(course.invoice.balance)}</td></tr>
      </tbody><//>`}`;
}

/** @param {any} props */
function Offer({ one, replaced, amount, currency }) {
  const became = one.taken_back ? 'taken back on ' + one.taken_back : one.agreed ? 'agreed on ' + one.agreed : replaced ? 'replaced by a later revision' : 'open';
  return html`<details class="why"><summary><span class="title">${one.kind === 'change' ? 'Change order ' : ''}${one.number}<br /><span class="how">given on ${one.given}, ${became}${one.why ? '; ' + one.why : ''}</span></span><span class="number">${amount(one.total)}</span></summary>
    <p class="help">${hours(one.mean_h)} expected; written down ${signed(one)}</p>
    ${one.changes
      ? html`<${Scroll} of=${'What changed in ' + one.number}>
          <thead><tr><th>against ${one.before}</th><th>how much</th><th class="number">before</th><th class="number">now</th><th class="number">difference</th></tr></thead>
          <tbody>
            ${one.changes.lines.map((line, i) => html`<tr key=${i}><th scope="row">${line.title}</th><td>${[line.quantity_before, line.quantity].filter((text, at, all) => text && text !== all[at - 1]).join(' to ')}</td><td class="number">${line.price_before === undefined ? '' : amount(line.price_before)}</td><td class="number">${line.price === undefined ? '' : amount(line.price)}</td><td class="number">${more(line.difference, currency)}</td></tr>`)}
            <tr><th scope="row">tax</th><td></td><td></td><td></td><td class="number">${more(one.changes.tax, currency)}</td></tr>
            <tr><th scope="row"><strong>total with tax</strong></th><td></td><td></td><td></td><td class="number"><strong>${more(one.changes.total, currency)}</strong></td></tr>
          </tbody>
        <//>`
      : html`<p>The first: ${amount(one.subtotal)} before tax, ${amount(one.tax)} tax.</p>`}
    ${one.payments.length > 0 && html`<p class="help">Payments agreed with it: ${one.payments.map((line) => amount(line.amount) + ' ' + line.at).join('; ')}</p>`}
  </details>`;
}

/** @param {any} props */
function Stages({ course }) {
  if (course.stages.length === 0) return html`<p class="help">None was promised: <code>trammel book stage ${course.job} TITLE --date DAY</code></p>`;
  return html`<${Scroll} of="Stages">
      <thead><tr><th>stage</th><th>promised for</th><th>done</th></tr></thead>
      <tbody>${course.stages.map((one) => html`<tr key=${one.stage}><th scope="row">${one.stage}</th><td>${one.promised ?? ''}${one.moved > 0 ? ', moved ' + (one.moved === 1 ? 'once' : one.moved + ' times') : ''}</td><td>${one.done ?? (one.promised && one.promised < today() ? 'late' : '')}</td></tr>`)}</tbody>
    <//>
    <ul class="plain">${course.said.map((one, i) => html`<li key=${i} class="how">${signed(one)}: ${one.stage}, ${one.word === 'done' ? 'done on' : 'promised for'} ${one.day}${one.why ? ', ' + one.why : ''}</li>`)}</ul>`;
}

/** A value of the fit-up sheet, as the ledger keeps it. @param {any} reading @param {number} value */
const read = (reading, value) => Number(value.toFixed(reading.unit === 'deg' ? 2 : 1)) + ' ' + reading.unit;

/** What was read after tacking, the latest first, and what it told the shop to do. @param {any} props */
const Tackings = ({ tackings }) => html`
  ${[...tackings].reverse().map((one) => html`<details class="why" key=${one.entry}><summary><span class="title">${one.answer}<br /><span class="how">on ${one.on}; ${one.readings.length === 1 ? '1 target' : one.readings.length + ' targets'} read</span></span></summary>
    <p class="help">written down ${signed(one)}</p>
    <ul class="plain">${one.said.map((line, i) => html`<li key=${i}>${line}</li>`)}</ul>
    ${one.readings.length > 0 && html`<${Scroll} of=${'Readings of entry ' + one.entry}>
      <thead><tr><th>target</th><th class="number">to set</th><th class="number">within</th><th class="number">read</th></tr></thead>
      <tbody>${one.readings.map((reading) => html`<tr key=${reading.target}><th scope="row">${reading.target}</th><td class="number">${read(reading, reading.set_to)}</td><td class="number">${read(reading, reading.within)}</td><td class="number">${reading.read.length === 0 ? 'taken back' : reading.read.map((value) => read(reading, value)).join('; ')}</td></tr>`)}</tbody>
    <//>`}</details>`)}`;

/** @param {any} props */
function Payments({ course, amount, took }) {
  const [entering, setEntering] = useState(false);
  const form = useRef(/** @type {any} */ (null));
  useEffect(() => form.current?.elements.amount.focus(), [entering]);
  /** @param {any} event */
  const submit = async (event) => {
    event.preventDefault();
    const given = event.target.elements;
    const now = await enter('/api/book/paid', { job: course.job, amount: given.amount.value.trim(), on: given.on.value.trim(), note: given.note.value.trim(), seen: course.payments.length }, 'Payment written down');
    if (now) {
      setEntering(false);
      took(now);
    }
  };
  return html`
    ${course.payments.length === 0
      ? html`<p class="help">None yet.</p>`
      : html`<${Scroll} of="Payments">
          <thead><tr><th>on</th><th>note</th><th>written down</th><th class="number">amount</th></tr></thead>
          <tbody>${course.payments.map((one, i) => html`<tr key=${i}><th scope="row">${one.on}</th><td>${one.note}</td><td>${signed(one)}</td><td class="number">${amount(one.amount)}</td></tr>`)}</tbody>
        <//>`}
    ${course.agreed === undefined
      ? html`<p class="help">A payment can be entered once the customer has agreed.</p>`
      : entering
        ? html`<form class="adding" ref=${form} onSubmit=${submit}>
            <label>What was paid, with a minus for what was given back<input name="amount" required autocomplete="off" inputmode="decimal" /></label>
            <label>On which day<input name="on" required autocomplete="off" defaultValue=${today()} pattern="[0-9]{4}-[0-9]{2}-[0-9]{2}" title="year-month-day" /></label>
            <label>Note<input name="note" autocomplete="off" maxlength="200" /></label>
            <p class="answers"><button class="main" disabled=${busy.value > 0}>Write it down</button> <button type="button" onClick=${() => setEntering(false)}>Leave it</button></p>
          </form>`
        : html`<p class="answers"><button class="enter-payment" onClick=${() => setEntering(true)}>Enter a payment</button></p>`}`;
}

function Goods() {
  const [book] = useAnswer('/api/book');
  if (!book) return html`<p class="help">Looking it up …</p>`;
  return html`<h2>Goods that were ordered</h2>
    ${book.orders.length === 0 && html`<p class="help">No order was placed yet: the page <a href="#order=jobs">Order</a> places one, and <code>trammel order --placed</code>.</p>`}
    ${[...book.orders].reverse().map((one) => html`<${Order} key=${one.order} order=${one} heading="h3" />`)}`;
}

/** @param {any} props */
function Order({ order, heading }) {
  const [entering, setEntering] = useState(false);
  /** @param {any} event */
  const submit = async (event) => {
    event.preventDefault();
    const given = event.target.elements;
    const note = given.note.value.trim();
    const lines = order.lines
      .map((line, i) => ({ line: i + 1, quantity: given['came-' + i]?.value.trim() ?? '', seen: line.received, note }))
      .filter((line) => line.quantity !== '');
    if (await enter('/api/book/received', { order: order.order, on: given.on.value.trim(), lines }, 'Goods written down')) {
      setEntering(false);
      shopChanged.value++;
    }
  };
  return html`<section class="order-kept" aria-label=${'Order ' + order.order}>
    <${heading} class="order-head">${order.order}, ${order.supplier} <span class="how">placed on ${order.placed}, due on ${order.due}; for ${order.jobs.join(', ')}; ${order.all_there ? 'all there' : order.due < today() ? 'overdue' : 'to come'}</span><//>
    <form onSubmit=${submit}>
      <${Scroll} of=${'Lines of order ' + order.order}>
        <thead><tr><th>what</th><th class="number">ordered</th><th class="number">there</th><th class="number">to come</th>${entering && html`<th>came now</th>`}</tr></thead>
        <tbody>${order.lines.map((line, i) => html`<tr key=${i}><th scope="row">${line.title}<br /><span class="how">${line.unit}</span></th><td class="number">${count(line.ordered)}</td><td class="number">${count(line.received)}</td><td class="number">${Number(line.to_come) > 0 ? html`<strong>${count(line.to_come)}</strong>` : '0'}</td>${entering && html`<td><input name=${'came-' + i} aria-label=${'came now: ' + line.title} autocomplete="off" inputmode="decimal" placeholder=${Number(line.to_come) > 0 ? count(line.to_come) : ''} /></td>`}</tr>`)}</tbody>
      <//>
      ${entering && html`<div class="adding">
        <label>On which day<input name="on" required autocomplete="off" defaultValue=${today()} pattern="[0-9]{4}-[0-9]{2}-[0-9]{2}" title="year-month-day" /></label>
        <label>Note<input name="note" autocomplete="off" maxlength="200" /></label>
        <p class="answers"><button class="main" disabled=${busy.value > 0}>Write it down</button> <button type="button" onClick=${() => setEntering(false)}>Leave it</button></p>
      </div>`}
    </form>
    ${!entering && !order.all_there && html`<p class="answers"><button class="small" onClick=${() => setEntering(true)}>Goods came</button></p>`}
    <ul class="plain">${order.receipts.map((one, i) => html`<li key=${i} class="how">${signed(one)}: ${count(one.quantity)} ${one.unit} of ${one.title} came on ${one.on}${one.note ? ', ' + one.note : ''}</li>`)}</ul>
  </section>`;
}

const OF = { one: '', pack: 'pack', nut: 'its nut', washer: 'its washer' };

function Prices() {
  const [sought, setSought] = useState('');
  const [found] = useAnswer('/api/book/prices?find=' + encodeURIComponent(sought));
  return html`<h2>What prices were</h2>
    <p class="help">Every price that a supplier’s list or this page changed, the latest first. The prices that count stand in <a href="#shop=prices">the shop’s tables</a>.</p>
    <p class="seek"><label for="seek">Find</label> <input id="seek" value=${sought} autocomplete="off" onInput=${(event) => setSought(event.target.value)} /></p>
    ${!found
      ? html`<p class="help">Looking it up …</p>`
      : found.prices.length === 0
        ? html`<p class="help">${sought ? 'No price that changed has that in its name, its source or its day.' : 'No price has changed yet.'}</p>`
        : html`<${Scroll} of="What prices were">
            <thead><tr><th>what</th><th class="number">was</th><th class="number">became</th><th>day</th><th>source</th><th>written down</th></tr></thead>
            <tbody>${found.prices.map((one, i) => html`<tr key=${i}><th scope="row">${[one.title, OF[one.price_of], one.from_number > 1 ? 'from ' + one.from_number + ' on' : ''].filter(Boolean).join(', ')}</th><td class="number">${one.was === undefined ? 'none' : cash(one.was, one.currency)}</td><td class="number">${cash(one.price, one.currency)}</td><td>${one.priced_on}</td><td>${one.source}</td><td>${signed(one)}</td></tr>`)}</tbody>
          <//>`}
    ${found && found.found > found.prices.length && html`<p class="help">and ${found.found - found.prices.length} before them: write into Find what you look for.</p>`}`;
}

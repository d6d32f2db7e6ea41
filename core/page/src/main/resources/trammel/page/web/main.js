// @ts-check
import { effect, untracked } from '@preact/signals';
import { render } from 'preact';
import { takeKey } from './api.js';
import { html } from './html.js';
import { Book } from './book.js';
import { Folder } from './folder.js';
import { Job } from './job.js';
import { Enter } from './enter.js';
import { Conflict, Notice, Spoken } from './notices.js';
import { Order } from './order.js';
import { Shop } from './shop.js';
import { openSheet, reload, sheet, shopStep } from './shopdesk.js';
import { atBook, atOrder, atShop, busy, connected, entering, job, shop, shopChanged, start, step } from './state.js';

function Page() {
  const inJob = job.value !== null;
  document.title = atBook.value ? 'The book · Trammel' : sheet.value ? 'The shop · Trammel' : inJob ? (job.value.document?.job?.number ?? job.value.file) + ' · Trammel' : 'Trammel';
  return html`
    ${entering.value ? html`<${Enter} />` : sheet.value ? html`<${Shop} />` : inJob ? html`<${Job} />` : atBook.value && shop.value ? html`<${Book} />` : atOrder.value && shop.value ? html`<${Order} />` : shop.value ? html`<${Folder} />` : html`<main class="starting"><p>Trammel is starting …</p></main>`}
    <${Notice} />
    <${Conflict} />
    <${Spoken} />
    ${!connected.value && html`<p class="offline" role="alert">Trammel cannot be reached. What is shown is as it was; nothing can be changed until it is there again.</p>`}
    <div class=${'busy' + (busy.value > 0 ? ' on' : '')} aria-hidden="true"></div>
  `;
}

window.addEventListener('keydown', (event) => {
  const typing = event.target instanceof HTMLElement && ['INPUT', 'TEXTAREA', 'SELECT'].includes(event.target.tagName);
  if (!(job.value || sheet.value) || typing || !(event.ctrlKey || event.metaKey)) return;
  const key = event.key.toLowerCase();
  if (key === 'z' || key === 'y') {
    event.preventDefault();
    (sheet.value ? shopStep : step)(key === 'y' || event.shiftKey ? 'redo' : 'undo');
  }
});

takeKey();
effect(() => {
  const wanted = atShop.value;
  untracked(() => openSheet(wanted));
});
effect(() => {
  if (shopChanged.value > 0) untracked(reload);
});
const root = /** @type {HTMLElement} */ (document.getElementById('page'));
root.replaceChildren();
render(html`<${Page} />`, root);
start();

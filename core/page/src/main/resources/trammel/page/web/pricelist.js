// @ts-check
/** A supplier's list, pasted as a whole. */
import { useState } from 'preact/hooks';
import { post } from './api.js';
import { pasted } from './clipboard.js';
import { html } from './html.js';
import { reload } from './shopdesk.js';
import { busy } from './state.js';

export function PriceList() {
  const [seen, setSeen] = useState(/** @type {any} */ (null));
  const [text, setText] = useState('');
  const ask = async (write) => {
    const source = /** @type {HTMLInputElement} */ (document.getElementById('list-source')).value.trim() || 'a list pasted on the page';
    busy.value++;
    try {
      setSeen(await post('/api/tables/prices/list', { lines: pasted(text), source, write }));
      if (write) {
        setText('');
        await reload();
      }
    } catch (error) {
      setSeen({ refused: /** @type {Error} */ (error).message });
    } finally {
      busy.value--;
    }
  };
  return html`<details class="list"><summary>Take in a supplier's list</summary>
    <p class="help">Paste the whole list with its headings: item or title, price, and where there are any unit, length, width and from which number on. Nothing is written before you have seen what changes.</p>
    <label for="list-text">The list</label><textarea id="list-text" rows="6" value=${text} onInput=${(event) => { setText(event.target.value); setSeen(null); }}></textarea>
    <label for="list-source">Where it comes from</label><input id="list-source" maxlength="120" autocomplete="off" />
    <p class="answers"><button disabled=${!text.trim()} onClick=${() => ask(false)}>See what changes</button>
    ${seen && !seen.refused && !seen.written && html` <button class="main" onClick=${() => ask(true)}>${seen.far_off ? 'The lines FAR OFF are right: take it in' : 'Take it in'}</button>`}</p>
    ${seen?.refused && html`<p class="refusal" role="alert">${seen.refused}</p>`}
    ${seen?.words && html`<pre tabindex="0">${seen.words}</pre>`}
    ${seen?.written && html`<p role="status">Taken in.</p>`}
  </details>`;
}

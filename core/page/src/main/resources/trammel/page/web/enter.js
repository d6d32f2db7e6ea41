// @ts-check
/** Where a device that was not let in yet gives the code. */
import { useState } from 'preact/hooks';
import { html } from './html.js';
import { enter } from './state.js';

export function Enter() {
  const [wrong, setWrong] = useState('');
  /** @param {any} event */
  const send = async (event) => {
    event.preventDefault();
    try {
      await enter(event.target.elements.code.value.trim());
    } catch (error) {
      setWrong(/** @type {Error} */ (error).message);
    }
  };
  return html`<main class="enter">
    <h1>Trammel</h1>
    <p>This page is opened by the address that <code>trammel page</code> shows on its own machine.</p>
    <p>On another device of the shop, give the code that stands on the first screen. The line is not encrypted: use it in the shop's own network only.</p>
    <form onSubmit=${send}>
      <label for="code">Code</label>
      <input id="code" name="code" inputmode="numeric" autocomplete="off" maxlength="6" required aria-describedby="code-wrong" />
      <button class="main">Come in</button>
      <p id="code-wrong" class="problem" role="alert">${wrong}</p>
    </form>
  </main>`;
}

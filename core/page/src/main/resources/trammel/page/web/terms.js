// @ts-check
/** What this job does differently from the shop's usual terms. */
import { Field } from './form.js';
import { html } from './html.js';
import { catalog } from './state.js';

export function Terms() {
  const terms = catalog.value?.fields.find((one) => one.key === 'terms');
  if (!terms) return null;
  return html`
    <h2>Terms</h2>
    <p class="help">What this job does differently from the <a href="#shop=shop">shop's usual terms</a>: an empty field is as usual. A limit that is moved needs a reason, and every paper says so.</p>
    ${terms.fields.map((field) => html`<${Field} key=${field.key} field=${field} path=${'terms.' + field.key} />`)}`;
}

// @ts-check
/** The picture beside a question: the vehicle, the datum and the arrow that is asked for. */
import { useEffect, useState } from 'preact/hooks';
import { blob } from './api.js';
import { html } from './html.js';
import { catalog } from './state.js';

/** @type {Map<string, Promise<string>>} */
const kept = new Map();

/** @param {string} path */
function load(path) {
  let found = kept.get(path);
  if (!found) {
    found = blob('/api/pictures/' + encodeURIComponent(path)).then((one) => URL.createObjectURL(one)).catch(() => '');
    kept.set(path, found);
  }
  return found;
}

/** @param {any} props */
export function Picture({ path }) {
  const [source, setSource] = useState('');
  const has = catalog.value?.pictures.includes(path);
  useEffect(() => {
    if (!has) return;
    let here = true;
    load(path).then((one) => here && setSource(one));
    return () => {
      here = false;
    };
  }, [path, has]);
  return source ? html`<img class="picture" src=${source} alt="Where it is measured" />` : null;
}

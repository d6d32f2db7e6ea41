// @ts-check
/** The table of the shop that is open: what the server says of it, what is entered, what is wrong. */
import { batch, signal } from '@preact/signals';
import { get, post, Refusal } from './api.js';
import { busy, notice, say, tell } from './state.js';

/** Which table is shown; null where none is. */
export const sheet = signal(/** @type {string | null} */ (null));
export const desk = signal(/** @type {any} */ (null));
/** What was entered and is not written, by the path of its cell. */
export const drafts = signal(/** @type {Map<string, string>} */ (new Map()));
export const wrong = signal(/** @type {any[]} */ ([]));
export const clash = signal(/** @type {any} */ (null));

const APART = { prices: '/api/tables/prices', stock: '/api/tables/stock' };

/** @param {string | null} key */
export async function openSheet(key) {
  if (key !== sheet.value) {
    batch(() => {
      sheet.value = key;
      drafts.value = new Map();
      wrong.value = [];
      clash.value = null;
    });
  }
  if (key) await reload();
}

/** Looks at the tables anew; what was entered and is not written stays. */
export async function reload() {
  const key = sheet.value;
  if (!key) return;
  busy.value++;
  try {
    const now = await get(APART[key] ?? '/api/tables');
    if (sheet.value === key) desk.value = { ...now, of: key };
  } catch (error) {
    tell(error);
  } finally {
    busy.value--;
  }
}

/** @param {'undo' | 'redo'} which */
export async function shopStep(which) {
  const what = desk.value?.[which];
  if (!what) return;
  try {
    await post('/api/tables/' + which, {});
    batch(() => {
      drafts.value = new Map();
      wrong.value = [];
    });
    await reload();
    say((which === 'undo' ? 'Taken back: ' : 'Done again: ') + what);
  } catch (error) {
    tell(error);
  }
}

/**
 * @param {string} label
 * @param {any[]} edits
 * @returns {Promise<boolean>} whether it was done
 */
export async function send(label, edits) {
  busy.value++;
  try {
    await post('/api/tables/edit', { label, edits });
    batch(() => {
      drafts.value = new Map();
      wrong.value = [];
      notice.value = null;
    });
    await reload();
    return true;
  } catch (error) {
    if (error instanceof Refusal && error.status === 409 && error.json.conflicts) {
      await reload();
      clash.value = { label, edits, conflicts: error.json.conflicts };
    } else if (error instanceof Refusal && error.json.problems) {
      wrong.value = error.json.problems;
      say(error.json.problems.length + ' to mend');
    } else tell(error);
    return false;
  } finally {
    busy.value--;
  }
}

/** A problem as a sentence or two. */
export const words = (one) => 'Given ' + one.given + '; allowed: ' + one.allowed + '. ' + one.remedy;

/** A path as problems name it. */
export const plain = (path) => path.replaceAll('"', '');

/** What is wrong, by the cell or the line that it is at. */
export function problemsByCell() {
  const by = new Map();
  for (const one of wrong.value) by.set(plain(one.field), words(one));
  return by;
}

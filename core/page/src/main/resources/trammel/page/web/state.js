// @ts-check
/**
 * The one state of the page. The job itself is in its file; what is here is what the server said
 * last, and what of it is looked at.
 */
import { batch, computed, signal } from '@preact/signals';
import { get, hasKey, jobPath, keepKey, listen, post, Refusal, Unreachable } from './api.js';

/** @typedef {{path: string, from?: any, to?: any}} Edit */

export const shop = signal(/** @type {any} */ (null));
export const catalog = signal(/** @type {any} */ (null));
export const job = signal(/** @type {any} */ (null));
export const judged = signal(/** @type {any} */ (null));
export const scene = signal(/** @type {any} */ (null));
/** What changes that are not made yet would come to. */
export const looked = signal(/** @type {any} */ (null));
export const tab = signal('see');
export const selected = signal('');
export const pose = signal({ heave_mm: 0, roll_deg: 0 });
/** Rises with every change of the view of the scene, so that what lies over it follows. */
export const turned = signal(0);
export const connected = signal(true);
export const busy = signal(0);
/** @type {import('@preact/signals').Signal<{words: string, kind: string} | null>} */
export const notice = signal(null);
/** @type {import('@preact/signals').Signal<{edits: Edit[], label: string, now: any}| null>} */
export const conflict = signal(null);
/** What is said aloud. */
export const spoken = signal('');
export const entering = signal(false);
/** The table of the shop that the address names; null for none. */
export const atShop = signal(/** @type {string | null} */ (null));
/** Whether the address names the order over several jobs. */
export const atOrder = signal(false);
/** The part of the shop's book that the address names; null for none. */
export const atBook = signal(/** @type {string | null} */ (null));
/** Which job of the book it names. */
export const bookOf = signal('');
/** How often the shop's catalog or ledger has changed since the page was opened. */
export const shopChanged = signal(0);

/** Changes of options that make single checks good: how many were tried, the fields and their edits by the check. */
export const optionChanges = signal(/** @type {any} */ (null));

export const units = computed(() => job.value?.units ?? 'us');

/** Checks as they are now, or as they would be while something is dragged. */
export const checks = computed(() => looked.value?.checks ?? judged.value?.checks ?? []);

export const counts = computed(() => {
  const count = { stop: 0, 'look again': 0, good: 0, 'not judged': 0 };
  for (const check of checks.value) count[check.verdict]++;
  return count;
});

/** Problems by the path of their field. */
export const problems = computed(() => {
  const byField = new Map();
  for (const problem of (looked.value?.problems ?? job.value?.problems) ?? []) {
    const at = byField.get(problem.field) ?? [];
    at.push(problem);
    byField.set(problem.field, at);
  }
  return byField;
});

/** Paths of fields that a job needs and this one has not. */
export const missing = computed(() => {
  const paths = new Set();
  const walk = (fields, prefix, written) => {
    for (const field of fields) {
      const path = prefix ? prefix + '.' + field.key : field.key;
      const now = written?.[field.key] ?? undefined;
      if (field.fields && field.kind !== 'section_list' && field.kind !== 'section_map') {
        if (field.required || now !== undefined) walk(field.fields, path, now);
      } else if (field.required && now === undefined) paths.add(path);
    }
  };
  if (job.value && catalog.value) walk(catalog.value.fields, '', job.value.document);
  return paths;
});

/**
 * What stands at a field of the job.
 * @param {string} path
 */
export function at(path) {
  let value = job.value?.document;
  for (const step of path.replaceAll('[', '.[').split('.')) {
    if (value === null || value === undefined) return undefined;
    value = step.startsWith('[') ? value[Number(step.slice(1, -1))] : value[step];
  }
  return value ?? undefined;
}

/** @param {any} error */
export function tell(error) {
  if (error?.name === 'AbortError') return;
  if (error instanceof Refusal && error.status === 401) {
    batch(() => {
      entering.value = true;
      notice.value = null;
    });
    return;
  }
  if (error instanceof Unreachable) connected.value = false;
  notice.value = { words: error.message, kind: 'stop' };
  if (!(error instanceof Refusal || error instanceof Unreachable)) console.error(error);
}

/** @param {string} words */
export function say(words) {
  spoken.value = words;
}

// Opening

export async function start() {
  if (!hasKey()) {
    entering.value = true;
    return;
  }
  try {
    shop.value = await get('/api/shop');
    entering.value = false;
  } catch (error) {
    tell(error);
    return;
  }
  window.addEventListener('hashchange', route);
  hear();
  await route();
}

/** @param {string} code */
export async function enter(code) {
  const answer = await post('/api/enter', { code });
  keepKey(answer.key);
  await start();
}

async function hear() {
  try {
    await listen(
      (news) => heard(news),
      (now) => {
        if (now && !connected.value) refresh();
        connected.value = now;
        if (now && notice.value?.words.startsWith('Trammel cannot be reached')) notice.value = null;
      },
    );
  } catch (error) {
    tell(error);
  }
}

/** Where the address says the page is: which job, which tab. */
async function route() {
  const at = new URLSearchParams(location.hash.slice(1));
  const file = at.get('job');
  atShop.value = at.get('shop');
  atOrder.value = at.has('order');
  atBook.value = at.get('book');
  bookOf.value = at.get('of') ?? '';
  if (!file) {
    batch(() => {
      job.value = null;
      judged.value = null;
      scene.value = null;
      looked.value = null;
    });
    if (shop.value) shop.value = await get('/api/shop').catch((error) => (tell(error), shop.value));
    return;
  }
  const wanted = at.get('at') ?? 'see';
  if (wanted !== tab.value) window.scrollTo(0, 0);
  tab.value = wanted;
  if (job.value?.file !== file) await open(file);
}

/**
 * @param {string} file
 * @param {string} [at]
 */
export function go(file, at) {
  const words = new URLSearchParams();
  if (file) words.set('job', file);
  if (file && at) words.set('at', at);
  location.hash = words.toString();
}

/** @param {string} file */
async function open(file) {
  batch(() => {
    job.value = null;
    judged.value = null;
    scene.value = null;
    looked.value = null;
    selected.value = '';
    notice.value = null;
    pose.value = { heave_mm: 0, roll_deg: 0 };
  });
  try {
    const asked = get(jobPath(file));
    const first = await asked;
    if (!catalog.value || catalog.value.units !== first.units) {
      const found = await get('/api/fields?units=' + first.units);
      catalog.value = { ...found, units: first.units };
    }
    took(first);
  } catch (error) {
    tell(error);
  }
}

async function refresh() {
  if (!job.value) return;
  try {
    took(await get(jobPath(job.value.file)));
  } catch (error) {
    tell(error);
  }
}

/** What this page has written itself, of which it hears as well. */
const own = new Set();
const PLAIN_NOTICE_MS = 8000;

/** What stands for the shop's catalog and ledger where news are told. */
const SHOP = 'catalog';
let shopKnown = '';

/** Prices and limits of the open job may be others now. @param {string} revision */
function hearOfShop(revision) {
  const first = shopKnown === '';
  if (revision === shopKnown) return;
  shopKnown = revision;
  if (first) return;
  shopChanged.value++;
  if (job.value) work(job.value);
}

/** @param {{file: string, revision: string}} news */
function heard(news) {
  if (news.file === SHOP) {
    hearOfShop(news.revision);
    return;
  }
  const now = job.value;
  const mine = own.delete(news.revision);
  if (now && news.file === now.file && news.revision !== now.revision && !sending) {
    if (news.revision === '') {
      notice.value = { words: 'The job file ' + news.file + ' was taken away.', kind: 'stop' };
      return;
    }
    refresh().then(() => {
      if (mine || job.value?.revision !== news.revision) return;
      const told = { words: 'The job was changed on another screen or in an editor; this is how it stands now.', kind: 'plain' };
      notice.value = told;
      setTimeout(() => {
        if (notice.value === told) notice.value = null;
      }, PLAIN_NOTICE_MS);
    });
  } else if (!now && shop.value) {
    route();
  }
}

// What the server says

/** @param {any} now */
function took(now) {
  const same = job.value?.file === now.file && job.value?.revision === now.revision;
  lookAway();
  job.value = now;
  if (!same || !judged.value) work(now);
}

/** @type {AbortController | null} */
let working = null;

/** Forms that the drawing has. */
export const shapes = new Map();

/** Whether no move of a point makes a check good without upsetting another. @param {any} check */
const unmended = (check) => (check.verdict === 'stop' || check.verdict === 'look again') && !(check.change && check.makes_worse.length === 0);

/** @param {any} now */
async function work(now) {
  optionChanges.value = null;
  working?.abort();
  working = new AbortController();
  const { signal: stop } = working;
  busy.value++;
  try {
    const judging = get(jobPath(now.file) + '/judge', stop).then((answer) => {
      if (!stop.aborted) judged.value = answer;
      return answer;
    });
    const answer = await judging;
    if (answer.no_price === undefined) {
      const drawn = await post(jobPath(now.file) + '/scene', { known: [...shapes.keys()] }, stop);
      if (stop.aborted) return;
      drawnJob = null;
      previewed.value = null;
      scene.value = drawn;
    }
    if (answer.checks.some(unmended)) {
      const found = await get(jobPath(now.file) + '/options', stop);
      if (!stop.aborted) optionChanges.value = found;
    }
  } catch (error) {
    if (stop.aborted) return;
    batch(() => {
      judged.value = null;
      scene.value = null;
    });
    if (error instanceof Refusal && error.status === 422) {
      judged.value = { refused: error.message, problems: error.json.problems ?? [], checks: [] };
    } else tell(error);
  } finally {
    busy.value--;
  }
}

/** The edits whose outcome is looked at in the drawing; null for the job itself. */
export const previewed = signal(/** @type {Edit[] | null} */ (null));
let drawnJob = /** @type {any} */ (null);

/**
 * Shows in the drawing what changes would come to, or the job itself again.
 * @param {Edit[] | null} edits
 */
export async function preview(edits) {
  if (edits === previewed.value) return;
  if (!edits) {
    previewed.value = null;
    if (drawnJob) scene.value = drawnJob;
    drawnJob = null;
    return;
  }
  try {
    const seen = await post(jobPath(job.value.file) + '/scene', { known: [...shapes.keys()], edits });
    drawnJob ??= scene.value;
    batch(() => {
      previewed.value = edits;
      scene.value = seen;
    });
  } catch (error) {
    tell(error);
  }
}

// Changing

/** One change after the other. */
let sending = false;
/** @type {(() => Promise<void>)[]} */
const queue = [];

/** @param {() => Promise<void>} task */
async function inTurn(task) {
  queue.push(task);
  if (sending) return;
  sending = true;
  try {
    for (let next = queue.shift(); next; next = queue.shift()) await next();
  } finally {
    sending = false;
  }
}

/**
 * Changes fields of the job, in its file at once.
 * @param {string} label what it is, in words
 * @param {Edit[]} edits
 * @param {string} [group] what belongs to one gesture is taken back as one
 * @returns {Promise<boolean>} whether it was done
 */
export function change(label, edits, group = '') {
  const file = job.value.file;
  return new Promise((done) =>
    inTurn(async () => {
      try {
        const now = await post(jobPath(file) + '/edit', { label, group, edits });
        own.add(now.revision);
        took(now);
        notice.value = null;
        done(true);
      } catch (error) {
        if (error instanceof Refusal && error.status === 409 && error.json.conflicts) {
          took(error.json);
          conflict.value = { label, edits: edits.filter((one) => error.json.conflicts.includes(one.path)), now: error.json };
        } else if (error instanceof Refusal && error.json.problems) {
          looked.value = { problems: [...error.json.problems.map((one) => ({ ...one, field: pathOf(edits, one.field) })), ...job.value.problems] };
        } else tell(error);
        done(false);
      }
    }),
  );
}

/** A refusal of one value names its own key; the edit has the whole path. */
function pathOf(edits, field) {
  return edits.find((edit) => edit.path === field || edit.path.endsWith('.' + field))?.path ?? field;
}

/** Sets fields to what they are to be, from what they are. */
export const set = (label, values, group) =>
  change(label, Object.entries(values).map(([path, to]) => ({ path, from: at(path), to })), group);

/** @param {'undo' | 'redo'} which */
export function step(which) {
  const file = job.value.file;
  const what = job.value[which];
  if (!what) return;
  inTurn(async () => {
    try {
      const now = await post(jobPath(file) + '/' + which, {});
      own.add(now.revision);
      took(now);
      say((which === 'undo' ? 'Taken back: ' : 'Done again: ') + what);
    } catch (error) {
      tell(error);
    }
  });
}

/** Newest wins: while one look is under way, only the last of those asked for meanwhile is kept. */
let looking = false;
/** @type {{edits: Edit[], began: number} | null} */
let nextLook = null;

/**
 * Looks what changes would come to, without making them.
 * @param {Edit[]} edits
 */
export async function look(edits) {
  nextLook = { edits, began: performance.now() };
  if (looking) return;
  looking = true;
  try {
    while (nextLook) {
      const { edits: asked, began } = nextLook;
      nextLook = null;
      const answer = await post(jobPath(job.value.file) + '/look', { edits: asked });
      if (stopped) {
        stopped = false;
        continue;
      }
      looked.value = answer;
      requestAnimationFrame(() => performance.measure('trammel look', { start: began, end: performance.now() }));
    }
  } catch (error) {
    tell(error);
  } finally {
    looking = false;
  }
}

let stopped = false;

/** Forgets what was only looked at. */
export function lookAway() {
  nextLook = null;
  stopped = looking;
  looked.value = null;
}

/** @param {boolean} mine whether this page's values are to stand */
export async function settle(mine) {
  const was = conflict.value;
  conflict.value = null;
  if (!was || !mine) return;
  await change(was.label, was.edits.map((edit) => ({ ...edit, from: at(edit.path) })));
}

/**
 * A new job file.
 * @param {string} file
 * @param {string} [from] the job that it is a copy of
 */
export async function create(file, from) {
  try {
    const made = await post('/api/jobs', { file, from: from ?? '' });
    go(made.file, from ? 'see' : 'measure');
    return true;
  } catch (error) {
    tell(error);
    return false;
  }
}

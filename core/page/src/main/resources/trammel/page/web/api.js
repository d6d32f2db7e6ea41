// @ts-check
/** The one place that talks to the server. */

const KEY = 'trammel.key';
const DEVICE = 'trammel.device';
const NAME = 'trammel.name';

/** An answer that says no, with the words for whoever asked. */
export class Refusal extends Error {
  /**
   * @param {number} status
   * @param {any} json
   */
  constructor(status, json) {
    super(json?.refused ?? 'The server said no (' + status + ').');
    this.status = status;
    this.json = json;
  }
}

/** The server cannot be reached: it was ended, or the network is gone. */
export class Unreachable extends Error {
  constructor() {
    super('Trammel cannot be reached. It may have been ended: start it again with trammel page.');
  }
}

/** Takes the key out of the address, so that it stands in no history and on no screen. */
export function takeKey() {
  const given = new URLSearchParams(location.hash.slice(1));
  const key = given.get('key');
  if (key) {
    sessionStorage.setItem(KEY, key);
    given.delete('key');
    history.replaceState(null, '', '#' + given.toString());
  }
}

/** @param {string} key */
export function keepKey(key) {
  sessionStorage.setItem(KEY, key);
}

export const hasKey = () => sessionStorage.getItem(KEY) !== null;

/** Whose changes are taken back together: this browser, also after it was closed. */
function device() {
  let device = localStorage.getItem(DEVICE);
  if (!device) {
    device = Array.from(crypto.getRandomValues(new Uint8Array(9)), (b) => b.toString(36)).join('');
    localStorage.setItem(DEVICE, device);
  }
  return device;
}

/** The name that signs what is written from this browser; empty until one is given. */
export const myName = () => localStorage.getItem(NAME) ?? '';

/** @param {string} name */
export const callMe = (name) => localStorage.setItem(NAME, name.trim());

const headers = () => ({
  'X-Trammel-Key': sessionStorage.getItem(KEY) ?? '',
  'X-Trammel-Device': device(),
  'X-Trammel-Name': encodeURIComponent(myName()),
});

/**
 * @param {string} path
 * @param {RequestInit} [how]
 */
async function ask(path, how = {}) {
  let answer;
  try {
    answer = await fetch(path, { ...how, headers: { ...headers(), ...how.headers } });
  } catch (error) {
    if (/** @type {any} */ (error)?.name === 'AbortError') throw error;
    throw new Unreachable();
  }
  const json = await answer.json();
  if (!answer.ok) throw new Refusal(answer.status, json);
  return json;
}

/**
 * @param {string} path
 * @param {AbortSignal} [signal]
 */
export const get = (path, signal) => ask(path, { signal });

/**
 * @param {string} path
 * @param {any} body
 * @param {AbortSignal} [signal]
 */
export const post = (path, body, signal) =>
  ask(path, {
    method: 'POST',
    body: JSON.stringify(body),
    headers: { 'Content-Type': 'application/json' },
    signal,
  });

/** @param {string} file */
export const jobPath = (file) => '/api/jobs/' + encodeURIComponent(file);

/**
 * A file of an answer that is no JSON, as something that can be shown or saved.
 * @param {string} path
 */
export async function blob(path) {
  const answer = await fetch(path, { headers: headers() });
  if (!answer.ok) throw new Refusal(answer.status, await answer.json());
  return answer.blob();
}

/**
 * Hears what changes, and goes on hearing when the line was cut.
 * @param {(news: {file: string, revision: string}) => void} heard
 * @param {(connected: boolean) => void} connected
 */
export async function listen(heard, connected) {
  for (;;) {
    try {
      const answer = await fetch('/api/events', { headers: headers() });
      if (!answer.ok || !answer.body) throw new Refusal(answer.status, await answer.json());
      connected(true);
      const reader = answer.body.pipeThrough(new TextDecoderStream()).getReader();
      let rest = '';
      for (;;) {
        const { value, done } = await reader.read();
        if (done) break;
        const lines = (rest + value).split('\n');
        rest = lines.pop() ?? '';
        for (const line of lines) if (line.trim()) heard(JSON.parse(line));
      }
    } catch (error) {
      if (error instanceof Refusal && error.status === 401) throw error;
    }
    connected(false);
    await new Promise((next) => setTimeout(next, 1000));
  }
}

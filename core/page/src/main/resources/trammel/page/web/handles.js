// @ts-check
/**
 * The pick-up points over a view to scale: dragged by a finger, a mouse or the arrow keys, in steps
 * of 1/16 in. While one moves the checks are asked what they would say; the job is changed when it is
 * let go.
 */
import { signal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { html } from './html.js';
import { at, change, look, looked, lookAway, say, scene, turned, units } from './state.js';
import { length, snapped, step, written } from './units.js';

const AXES = ['forward', 'left', 'up'];
const KEYS = { ArrowRight: [1, 0], ArrowLeft: [-1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };
const LONG_STEPS = 16;
const REST_MS = 900;
const READING_PX = 270;

/** Whether the other side moves along. */
export const together = signal(true);
/** What is being moved: where its points stand now, by their names. */
export const moving = signal(/** @type {{name: string, end: string, points: Map<string, number[]>} | null} */ (null));

/** @param {string} name */
function otherSide(name) {
  if (name.includes('left')) return name.replace('left', 'right');
  return name.includes('right') ? name.replace('right', 'left') : '';
}

/**
 * Where the points of a gesture stand when the first one stands somewhere.
 * @param {any} point
 * @param {string} end
 * @param {number[]} to
 */
function points(point, end, to) {
  const all = new Map([[point.name, to]]);
  const twin = scene.value.points.find((one) => one.name === otherSide(point.name));
  if (together.value && twin) {
    const moved = twin[end].slice();
    to.forEach((value, i) => {
      if (value !== point[end][i]) moved[i] = i === 1 ? -value : value;
    });
    all.set(twin.name, moved);
  }
  return all;
}

/**
 * The edits that put points where they stand.
 * @param {string} end
 * @param {Map<string, number[]>} all
 */
function edits(end, all) {
  const made = [];
  for (const [name, to] of all) {
    const was = scene.value.points.find((one) => one.name === name)[end];
    to.forEach((value, i) => {
      if (Math.abs(value - was[i]) < 1e-6) return;
      const path = 'chosen.pickups.' + name + '.' + end + '.' + AXES[i];
      made.push({ path, from: at(path), to: written(value, units.value) });
    });
  }
  return made;
}

/**
 * @param {any} point
 * @param {string} end
 * @param {number[]} to
 */
function move(point, end, to) {
  const all = points(point, end, to);
  moving.value = { name: point.name, end, points: all };
  const wanted = edits(end, all);
  if (wanted.length) look(wanted);
}

/** @param {string} group */
async function drop(group) {
  const now = moving.value;
  if (!now) return;
  const wanted = edits(now.end, now.points);
  if (!wanted.length) {
    moving.value = null;
    lookAway();
    return;
  }
  const words = now.name + ', ' + now.end + ' end: ' + place(/** @type {number[]} */ (now.points.get(now.name)));
  const verdicts = looked.value?.checks;
  const before = scene.value;
  const done = await change('Move ' + words, wanted, group);
  if (!done) moving.value = null;
  else forgetWhenDrawn(before, now);
  if (verdicts) say(words + '. ' + verdicts.filter((one) => one.verdict === 'stop').length + ' stop.');
}

/** The handles stay where they were let go until the drawing has come after them. */
function forgetWhenDrawn(before, was) {
  const end = scene.subscribe((now) => {
    if (now !== before && moving.value === was) {
      moving.value = null;
      queueMicrotask(() => end());
    }
  });
  setTimeout(() => {
    if (moving.value === was) moving.value = null;
    end();
  }, 5000);
}

/** @param {number[]} point */
const place = (point) =>
  [length(point[0], units.value) + ' forward', length(point[1], units.value) + ' left', length(point[2], units.value) + ' up'].join(', ');

/** @param {any} props */
export function Handles({ stage }) {
  turned.value;
  const now = moving.value;
  const where = (point, end) => now && now.end === end && now.points.has(point.name) ? now.points.get(point.name) : point[end];
  const ways = stage.ways();
  const side = Math.abs(ways.right[0]) > 0.5 && Math.abs(ways.up[2]) > 0.5;
  const hidden = (point) => side && together.value && point.name.includes('right') && scene.value.points.some((one) => one.name === otherSide(point.name));
  const seen = scene.value.points.filter((point) => !hidden(point));
  const ground = stage.project([0, 0, 0]);
  return html`<svg class="handles" role="group" aria-label="Pick-up points" width=${stage.width} height=${stage.height}>
    <g aria-hidden="true">
      <line class="datum" x1=${ground.x} x2=${ground.x} y1="0" y2=${stage.height} />
      <line class="datum" x1="0" x2=${stage.width} y1=${ground.y} y2=${ground.y} />
      ${seen.map((point) => {
        const a = stage.project(where(point, 'frame'));
        const b = stage.project(where(point, 'axle'));
        return html`<line key=${point.name} class=${'member ' + point.kind} x1=${a.x} y1=${a.y} x2=${b.x} y2=${b.y} />`;
      })}
    </g>
    ${seen.flatMap((point) => ['frame', 'axle'].map((end) => html`<${Handle} key=${point.name + end} stage=${stage} point=${point} end=${end} at=${where(point, end)} />`))}
  </svg>`;
}

/** @param {any} props */
function Handle({ stage, point, end, at: now }) {
  const grip = useRef(/** @type {any} */ (null));
  const gesture = useRef(0);
  const rest = useRef(0);
  const seen = stage.project(now);
  const active = moving.value?.name === point.name && moving.value?.end === end;

  /** The place after a shift on the screen, in steps from where the point stands. */
  const shifted = (from, right, up) => {
    const ways = stage.ways();
    return from.map((value, i) => {
      const by = ways.right[i] * right + ways.up[i] * up;
      return Math.abs(by) < 1e-9 ? value : snapped(value + by, units.value);
    });
  };
  const last = () => (active ? moving.value?.points.get(point.name) : null) ?? point[end];
  const down = (event) => {
    if (event.button !== 0) return;
    event.stopPropagation();
    event.currentTarget.setPointerCapture(event.pointerId);
    gesture.current = Date.now();
    grip.current = { x: event.clientX, y: event.clientY, from: last() };
  };
  const drag = (event) => {
    if (!grip.current) return;
    const { x, y, from } = grip.current;
    const scale = stage.scale();
    const to = shifted(from, (event.clientX - x) / scale, (y - event.clientY) / scale);
    const before = moving.value?.points.get(point.name) ?? point[end];
    if (to.some((value, i) => value !== before[i])) move(point, end, to);
  };
  const up = () => {
    if (!grip.current) return;
    grip.current = null;
    drop('drag ' + gesture.current);
  };
  const key = (event) => {
    const way = KEYS[event.key];
    if (event.key === 'Escape' && active) {
      event.stopPropagation();
      clearTimeout(rest.current);
      moving.value = null;
      lookAway();
      return;
    }
    if (!way) return;
    event.preventDefault();
    event.stopPropagation();
    if (!active) gesture.current = Date.now();
    const by = step(units.value) * (event.shiftKey ? LONG_STEPS : 1);
    move(point, end, shifted(last(), way[0] * by, way[1] * by));
    clearTimeout(rest.current);
    rest.current = window.setTimeout(() => drop('keys ' + gesture.current), REST_MS);
  };
  const label = point.name + ', ' + end + ' end';
  return html`<g class=${'handle' + (active ? ' active' : '')} tabindex="0" role="button" aria-roledescription="point to drag"
      aria-label=${label + ': ' + place(now) + '. Arrow keys move it.'} data-point=${point.name + '.' + end}
      transform=${'translate(' + seen.x + ' ' + seen.y + ')'}
      onPointerDown=${down} onPointerMove=${drag} onPointerUp=${up} onLostPointerCapture=${up} onKeyDown=${key}>
    <circle class="reach" r="18" /><circle class="dot" r="6" />
    ${active && html`<g aria-hidden="true" class="reading" transform=${'translate(' + (seen.x > stage.width - READING_PX - 20 ? -READING_PX - 14 : 14) + ' ' + (seen.y < 60 ? 30 : -34) + ')'}><rect width=${READING_PX} height="44" /><text x="8" y="17">${label}</text><text x="8" y="35" class="figures">${reading(stage, now)}</text></g>`}
  </g>`;
}

/** The two distances that the view shows. */
function reading(stage, now) {
  const ways = stage.ways();
  return AXES.filter((axis, i) => Math.abs(ways.right[i]) + Math.abs(ways.up[i]) > 0.5)
    .map((axis) => length(now[AXES.indexOf(axis)], units.value) + ' ' + axis)
    .join(', ');
}

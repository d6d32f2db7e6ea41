// @ts-check
/** The drawing of the job: the stage, what lies over it, and what moves it. */
import { signal } from '@preact/signals';
import { useEffect, useRef, useState } from 'preact/hooks';
import { get, jobPath, post } from './api.js';
import { html } from './html.js';
import { tight } from './checks.js';
import { Handles } from './handles.js';
import { geometry, Stage } from './stage.js';
import { job, judged, missing, pose, previewed, scene, selected, shapes, tell, turned, units } from './state.js';
import { length } from './units.js';

export const shown = signal({ plate: true, tube: true, bought: true, bolt: true, weld: true, vehicle: true, tool: false });
export const view = signal('3-d');
const apart = signal(0);
const cutting = signal({ axis: 'none', share: 0.5 });

/** @type {Map<string, any>} */
const geometries = new Map();

const VIEWS = [['3-d', '3-D'], ['side', 'Side'], ['plan', 'Plan'], ['rear', 'Rear']];

/** The scene, with the forms that are not here yet. */
async function take(now) {
  for (const [name, shape] of Object.entries(now.shapes)) {
    geometries.set(name, geometry(/** @type {any} */ (shape)));
    shapes.set(name, true);
  }
  if (now.parts.some((part) => !geometries.has(part.shape))) {
    const again = await post(jobPath(job.value.file) + '/scene', { known: [] });
    for (const [name, shape] of Object.entries(again.shapes)) {
      geometries.set(name, geometry(/** @type {any} */ (shape)));
      shapes.set(name, true);
    }
  }
}

export function Drawing() {
  const canvas = useRef(/** @type {HTMLCanvasElement | null} */ (null));
  const box = useRef(/** @type {HTMLDivElement | null} */ (null));
  const [stage, setStage] = useState(/** @type {Stage | null} */ (null));
  const [failed, setFailed] = useState('');

  useEffect(() => {
    /** @type {Stage} */
    let made;
    try {
      made = new Stage(/** @type {HTMLCanvasElement} */ (canvas.current), () => turned.value++, geometries);
    } catch {
      setFailed('This browser draws nothing in three dimensions (no WebGL). Checks, price and papers work all the same.');
      return;
    }
    const fit = () => made.resize(box.current?.clientWidth ?? 0, box.current?.clientHeight ?? 0);
    const watch = new ResizeObserver(fit);
    watch.observe(/** @type {Element} */ (box.current));
    fit();
    setStage(made);
    return () => {
      watch.disconnect();
      made.dispose();
    };
  }, []);

  const now = scene.value;
  useEffect(() => {
    if (stage && now) take(now).then(() => stage.show(now)).then(() => mark(stage)).catch(tell);
  }, [stage, now]);
  useEffect(() => stage?.look(view.value), [stage, view.value]);
  useEffect(() => stage?.spread(apart.value), [stage, apart.value]);
  useEffect(() => stage?.cut(cutting.value.axis, cutting.value.share), [stage, cutting.value]);
  useEffect(() => {
    if (stage) mark(stage);
  }, [stage, shown.value, selected.value, judged.value, now]);
  useEffect(() => {
    if (stage) bring(stage);
  }, [stage, now, pose.value]);

  return html`
    <div class="views" role="group" aria-label="View">
      ${VIEWS.map(([key, title]) => html`<button key=${key} aria-pressed=${view.value === key} onClick=${() => (view.value = key)}>${title}</button>`)}
      <button onClick=${() => stage?.fit()}>Fit</button>
    </div>
    <div class="canvas" ref=${box}>
      <canvas ref=${canvas} tabindex="0" role="img" aria-label=${label()} onPointerDown=${pressed} onPointerUp=${(event) => released(event, stage)} onKeyDown=${(event) => keyed(event, stage)}></canvas>
      ${stage && view.value !== '3-d' && now && !still() && html`<${Handles} stage=${stage} />`}
      ${!now && html`<p class="over">${judged.value?.refused || judged.value?.no_price ? missing.value.size ? 'There is a drawing when everything is measured.' : 'No drawing: see what the checks say.' : failed || 'Drawing …'}</p>`}
      ${failed && html`<p class="over">${failed}</p>`}
      ${previewed.value && html`<p class="previewed" role="status">A layout that was found, not the job. Nothing is changed.</p>`}
      <${TitleBlock} stage=${stage} />
    </div>
    ${now && html`<${Travel} travel=${now.travel} />`}`;
}

const still = () => pose.value.heave_mm !== 0 || pose.value.roll_deg !== 0 || apart.value > 0;

function label() {
  const titles = { '3-d': 'three dimensions', side: 'side view', plan: 'plan, from above', rear: 'rear view' };
  return 'The finished job, ' + titles[view.value] + '. Arrow keys turn or shift it, plus and minus zoom.';
}

/** @param {Stage} stage */
function mark(stage) {
  const near = scene.value ? tight(judged.value?.checks ?? [], scene.value.parts) : new Map();
  stage.mark(shown.value, selected.value, new Set(near.keys()));
}

/** Poses are asked of the engine; the newest wins. */
let posing = false;
/** @param {Stage} stage */
async function bring(stage) {
  const { heave_mm, roll_deg } = pose.value;
  if (heave_mm === 0 && roll_deg === 0) {
    stage.pose(null);
    return;
  }
  if (posing) return;
  posing = true;
  try {
    let asked;
    do {
      asked = pose.value;
      const answer = await get(jobPath(job.value.file) + '/pose?heave_mm=' + asked.heave_mm + '&roll_deg=' + asked.roll_deg);
      if (answer.reached && asked === pose.value) stage.pose(answer.bodies);
    } while (asked !== pose.value && (pose.value.heave_mm !== 0 || pose.value.roll_deg !== 0));
    if (pose.value.heave_mm === 0 && pose.value.roll_deg === 0) stage.pose(null);
  } catch (error) {
    tell(error);
  } finally {
    posing = false;
  }
}

// Pressing a part

let pressedAt = { x: 0, y: 0 };
/** @param {PointerEvent} event */
const pressed = (event) => (pressedAt = { x: event.clientX, y: event.clientY });

/**
 * @param {PointerEvent} event
 * @param {Stage | null} stage
 */
function released(event, stage) {
  if (!stage || Math.hypot(event.clientX - pressedAt.x, event.clientY - pressedAt.y) > 5) return;
  const at = /** @type {Element} */ (event.target).getBoundingClientRect();
  selected.value = stage.pick(event.clientX - at.left, event.clientY - at.top);
}

/**
 * @param {KeyboardEvent} event
 * @param {Stage | null} stage
 */
function keyed(event, stage) {
  if (!stage) return;
  const acts = {
    ArrowLeft: () => stage.nudge(-1, 0),
    ArrowRight: () => stage.nudge(1, 0),
    ArrowUp: () => stage.nudge(0, 1),
    ArrowDown: () => stage.nudge(0, -1),
    '+': () => stage.zoom(1.15),
    '-': () => stage.zoom(1 / 1.15),
  };
  const act = acts[event.key];
  if (!act) return;
  event.preventDefault();
  act();
}

// Below the drawing

/** @param {any} props */
function Travel({ travel }) {
  const { heave_mm, roll_deg } = pose.value;
  const cut = cutting.value;
  return html`<div class="travel">
    <label>Heave <output>${heave_mm === 0 ? 'at ride' : length(Math.abs(heave_mm), units.value, 16) + (heave_mm > 0 ? ' up' : ' down')}</output>
      <input type="range" min=${-travel.droop_mm} max=${travel.bump_mm} step="any" value=${heave_mm} onInput=${(event) => (pose.value = { ...pose.value, heave_mm: near(Number(event.target.value), travel.bump_mm + travel.droop_mm) })} /></label>
    <label>Roll <output>${roll_deg === 0 ? 'level' : Math.abs(roll_deg).toFixed(1) + ' deg, ' + (roll_deg > 0 ? 'left' : 'right') + ' wheel up'}</output>
      <input type="range" min=${-travel.roll_most_deg} max=${travel.roll_most_deg} step="any" value=${roll_deg} onInput=${(event) => (pose.value = { ...pose.value, roll_deg: near(Number(event.target.value), 2 * travel.roll_most_deg) })} /></label>
    <label>Apart <input type="range" min="0" max="1" step="0.05" value=${apart.value} onInput=${(event) => (apart.value = Number(event.target.value))} /></label>
    <label>Cut <select value=${cut.axis} onChange=${(event) => (cutting.value = { ...cut, axis: event.target.value })}>
      <option value="none">nowhere</option><option value="y">along the vehicle</option><option value="x">across it</option><option value="z">level</option></select>
      ${cut.axis !== 'none' && html`<input type="range" aria-label="Where it is cut" min="0" max="1" step="0.01" value=${cut.share} onInput=${(event) => (cutting.value = { ...cut, share: Number(event.target.value) })} />`}</label>
    <button onClick=${() => { pose.value = { heave_mm: 0, roll_deg: 0 }; apart.value = 0; cutting.value = { axis: 'none', share: 0.5 }; }}>At ride, whole</button>
  </div>`;
}

/** A slider near its middle means the middle. */
const near = (value, range) => (Math.abs(value) < range / 100 ? 0 : Math.round(value * 100) / 100);

/** @param {any} props */
function TitleBlock({ stage }) {
  turned.value;
  const header = job.value.document?.job ?? {};
  const flat = stage && view.value !== '3-d';
  const scale = flat ? 'about 1 : ' + Math.round(96 / 25.4 / stage.scale()) : 'not to scale';
  return html`<dl class="block" aria-hidden="true"><div><dt>job</dt><dd>${header.number}</dd></div><div><dt>view</dt><dd>${VIEWS.find(([key]) => key === view.value)?.[1]}</dd></div><div><dt>scale</dt><dd>${scale}</dd></div></dl>`;
}


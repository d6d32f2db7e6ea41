// @ts-check
/**
 * The scene that is drawn: every part of the assembly by its triangles, moved by its body. Drawn
 * only when something changed, and only what changed is built anew.
 */
import * as THREE from 'three';
import { OrbitControls } from 'three/addons/OrbitControls.js';

const PAPER = 0xffffff;
const ACCENT = 0xa8331c;
const TIGHT = 0xe8a39e;
const FILL = { plate: 0xe9edf2, tube: 0xc9cfd6, bought: 0xb9b9b9, bolt: 0x6d6d6d, vehicle: 0xdcdcdc, tool: 0xe6dcc2 };
const EDGE_DEGREES = 28;
/** How far parts go apart at most, as a share of their distance from the middle. */
const APART = 0.9;
/** What a key turns, shifts. */
const TURN_RAD = 0.12;
const SHIFT_PX = 40;

/** @param {THREE.Vector3} v */
const toYUp = (v) => v.set(v.y, v.z, v.x);
/** @param {THREE.Vector3} v */
const fromYUp = (v) => v.set(v.z, v.x, v.y);

/** From where the vehicle is looked at: towards, and what is up on the screen. */
const VIEWS = {
  side: { towards: [0, -1, 0], up: [0, 0, 1] },
  plan: { towards: [0, 0, -1], up: [0, 1, 0] },
  rear: { towards: [1, 0, 0], up: [0, 0, 1] },
};

/**
 * Calls at the next frame, however often it was asked for before it.
 * @param {() => void} draw
 */
export function onDemand(draw) {
  let asked = false;
  return () => {
    if (asked) return;
    asked = true;
    requestAnimationFrame(() => {
      asked = false;
      draw();
    });
  };
}

/** @param {string} text */
function bytes(text) {
  const raw = atob(text);
  const out = new Uint8Array(raw.length);
  for (let i = 0; i < raw.length; i++) out[i] = raw.charCodeAt(i);
  return out.buffer;
}

/** @param {{corners: string, faces: string}} shape */
export function geometry(shape) {
  const made = new THREE.BufferGeometry();
  made.setAttribute('position', new THREE.BufferAttribute(new Float32Array(bytes(shape.corners)), 3));
  made.setIndex(new THREE.BufferAttribute(new Uint32Array(bytes(shape.faces)), 1));
  made.computeBoundingBox();
  return { solid: made, edges: new THREE.EdgesGeometry(made, EDGE_DEGREES) };
}

export class Stage {
  /**
   * @param {HTMLCanvasElement} canvas
   * @param {() => void} moved called when the view changed
   * @param {Map<string, any>} shapes geometries by the name of their form
   */
  constructor(canvas, moved, shapes) {
    this.canvas = canvas;
    this.shapes = shapes;
    this.renderer = new THREE.WebGLRenderer({ canvas, antialias: window.devicePixelRatio < 2, alpha: false, preserveDrawingBuffer: true });
    this.renderer.setClearColor(PAPER);
    this.world = new THREE.Scene();
    this.world.add(new THREE.HemisphereLight(0xffffff, 0x9a9a9a, 2.4));
    const sun = new THREE.DirectionalLight(0xffffff, 1.2);
    sun.position.set(2000, 3000, 4000);
    this.world.add(sun);
    this.persp = new THREE.PerspectiveCamera(28, 1, 50, 40000);
    this.persp.up.set(0, 0, 1);
    this.flat = new THREE.OrthographicCamera(-1, 1, 1, -1, -20000, 20000);
    this.camera = /** @type {any} */ (this.persp);
    this.view = '3-d';
    this.draw = onDemand(() => {
      this.renderer.render(this.world, this.camera);
      moved();
    });
    this.turning = new OrbitControls(this.persp, canvas);
    this.sliding = new OrbitControls(this.flat, canvas);
    this.sliding.enableRotate = false;
    this.sliding.mouseButtons = { LEFT: THREE.MOUSE.PAN, MIDDLE: THREE.MOUSE.DOLLY, RIGHT: THREE.MOUSE.PAN };
    this.sliding.touches = { ONE: THREE.TOUCH.PAN, TWO: THREE.TOUCH.DOLLY_PAN };
    for (const controls of [this.turning, this.sliding]) {
      controls.screenSpacePanning = true;
      controls.addEventListener('change', this.draw);
    }
    this.sliding.enabled = false;
    /** @type {Map<string, THREE.Group>} */
    this.bodies = new Map();
    /** @type {Map<string, any>} */
    this.parts = new Map();
    this.box = new THREE.Box3();
    this.fitted = false;
    this.apart = 0;
    this.materials = new Map();
    this.width = 1;
    this.height = 1;
  }

  dispose() {
    this.turning.dispose();
    this.sliding.dispose();
    for (const part of this.parts.values()) this.drop(part);
    for (const material of this.materials.values()) material.dispose();
    this.renderer.dispose();
  }

  material(kind, fill) {
    const key = kind + fill;
    let found = this.materials.get(key);
    if (!found) {
      const seeThrough = kind === 'vehicle' && fill !== ACCENT;
      found = new THREE.MeshLambertMaterial({
        color: fill, flatShading: true, side: THREE.DoubleSide,
        transparent: seeThrough, opacity: seeThrough ? 0.18 : 1, depthWrite: !seeThrough,
        polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1,
      });
      this.materials.set(key, found);
    }
    return found;
  }

  line(color) {
    const key = 'line' + color;
    let found = this.materials.get(key);
    if (!found) {
      found = new THREE.LineBasicMaterial({ color });
      this.materials.set(key, found);
    }
    return found;
  }

  /** @param {string} name */
  body(name) {
    let group = this.bodies.get(name);
    if (!group) {
      group = new THREE.Group();
      group.matrixAutoUpdate = false;
      this.world.add(group);
      this.bodies.set(name, group);
    }
    return group;
  }

  drop(part) {
    part.group.removeFromParent();
    if (part.own) part.own.dispose();
  }

  /** @param {any} scene what the server says */
  show(scene) {
    const gone = new Map(this.parts);
    const carriers = new Map(scene.parts.map((part) => [part.id, part.carrier]));
    for (const part of scene.parts) {
      gone.delete(part.id);
      let now = this.parts.get(part.id);
      if (!now || now.shape !== part.shape || now.kind !== part.kind || now.carrier !== part.carrier) {
        if (now) this.drop(now);
        const shape = this.shapes.get(part.shape);
        const solid = new THREE.Mesh(shape.solid, this.material(part.kind, FILL[part.kind]));
        const edges = new THREE.LineSegments(shape.edges, this.line(part.kind === 'vehicle' ? 0xb4b4b4 : 0x000000));
        const group = new THREE.Group();
        group.matrixAutoUpdate = false;
        group.add(solid, edges);
        solid.userData.id = part.id;
        now = { id: part.id, kind: part.kind, carrier: part.carrier, shape: part.shape, group, solid, edges };
        this.parts.set(part.id, now);
        this.body(part.carrier).add(group);
      }
      now.place = new THREE.Matrix4().fromArray(part.place);
      now.middle = this.shapes.get(part.shape).solid.boundingBox.getCenter(new THREE.Vector3()).applyMatrix4(now.place);
    }
    for (const seam of scene.seams) {
      const id = 'weld ' + seam.id;
      gone.delete(id);
      const before = this.parts.get(id);
      if (before) this.drop(before);
      const points = [];
      for (const path of seam.path) {
        for (let i = 0; i + 5 < path.length; i += 3) points.push(...path.slice(i, i + 6));
      }
      const own = new THREE.BufferGeometry();
      own.setAttribute('position', new THREE.BufferAttribute(new Float32Array(points), 3));
      own.computeBoundingBox();
      const edges = new THREE.LineSegments(own, this.line(ACCENT));
      const group = new THREE.Group();
      group.matrixAutoUpdate = false;
      group.add(edges);
      const place = new THREE.Matrix4();
      this.parts.set(id, { id, kind: 'weld', carrier: carriers.get(seam.parts[0]), group, edges, own, place, middle: (own.boundingBox ?? new THREE.Box3()).getCenter(new THREE.Vector3()) });
      this.body(carriers.get(seam.parts[0]) ?? 'frame').add(group);
    }
    for (const [id, part] of gone) {
      this.drop(part);
      this.parts.delete(id);
    }
    this.box.makeEmpty();
    for (const part of this.parts.values()) {
      if (part.kind !== 'vehicle' && part.kind !== 'weld') {
        this.box.union(part.solid.geometry.boundingBox.clone().applyMatrix4(part.place));
      }
    }
    for (const point of scene.points) {
      this.box.expandByPoint(new THREE.Vector3(...point.frame)).expandByPoint(new THREE.Vector3(...point.axle));
    }
    this.spread(this.apart);
    if (!this.fitted) this.fit();
    this.draw();
  }

  /** @param {number} apart how far parts stand apart, 0 to 1 */
  spread(apart) {
    this.apart = apart;
    const middle = this.box.getCenter(new THREE.Vector3());
    for (const part of this.parts.values()) {
      const away = part.middle.clone().sub(middle).multiplyScalar(APART * apart);
      part.group.matrix.makeTranslation(away.x, away.y, away.z).multiply(part.place);
      part.group.matrixWorldNeedsUpdate = true;
    }
    this.draw();
  }

  /** @param {Record<string, number[]> | null} motions how each body has moved; null at ride */
  pose(motions) {
    for (const [name, group] of this.bodies) {
      if (motions?.[name]) group.matrix.fromArray(motions[name]);
      else group.matrix.identity();
      group.matrixWorldNeedsUpdate = true;
    }
    this.draw();
  }

  /**
   * @param {Record<string, boolean>} kinds which are shown
   * @param {string} selected id of the part that was pressed
   * @param {Set<string>} tight ids of parts that checks speak of
   */
  mark(kinds, selected, tight) {
    for (const part of this.parts.values()) {
      part.group.visible = kinds[part.kind] || part.id === selected;
      if (!part.solid) continue;
      const fill = part.id === selected ? ACCENT : tight.has(part.id) ? TIGHT : FILL[part.kind];
      part.solid.material = this.material(part.kind, fill);
    }
    this.draw();
  }

  /**
   * Cuts the drawing at a plane, and shows what is behind it.
   * @param {string} axis x, y, z or none
   * @param {number} share where, from 0 to 1 through the job
   */
  cut(axis, share) {
    const at = { x: 0, y: 1, z: 2 }[axis];
    if (at === undefined) this.renderer.clippingPlanes = [];
    else {
      const normal = new THREE.Vector3().setComponent(at, -1);
      const low = this.box.min.getComponent(at) - 20;
      const high = this.box.max.getComponent(at) + 20;
      this.renderer.clippingPlanes = [new THREE.Plane(normal, low + share * (high - low))];
    }
    this.draw();
  }

  /** @param {string} view 3-d, side, plan or rear */
  look(view) {
    this.view = view;
    const flat = view !== '3-d';
    this.camera = flat ? this.flat : this.persp;
    this.turning.enabled = !flat;
    this.sliding.enabled = flat;
    this.fit();
  }

  fit() {
    if (this.box.isEmpty() || this.width < 2) return;
    this.fitted = true;
    const middle = this.box.getCenter(new THREE.Vector3());
    const size = this.box.getSize(new THREE.Vector3());
    if (this.camera === this.persp) {
      const radius = size.length() / 2;
      const narrow = Math.min(1, this.persp.aspect);
      const far = (radius / Math.sin(THREE.MathUtils.degToRad(this.persp.fov / 2)) / narrow) * 0.9;
      const from = new THREE.Vector3(-0.62, 0.72, 0.48).normalize();
      this.persp.position.copy(middle).addScaledVector(from, far);
      this.turning.target.copy(middle);
      this.turning.update();
    } else {
      const { towards, up } = VIEWS[this.view];
      const dir = new THREE.Vector3(...towards);
      this.flat.up.set(up[0], up[1], up[2]);
      this.flat.position.copy(middle).addScaledVector(dir, -5000);
      const right = dir.clone().cross(this.flat.up);
      const high = Math.abs(this.flat.up.x) * size.x + Math.abs(this.flat.up.y) * size.y + Math.abs(this.flat.up.z) * size.z;
      const wide = Math.abs(right.x) * size.x + Math.abs(right.y) * size.y + Math.abs(right.z) * size.z;
      this.flat.zoom = Math.min(this.width / (wide * 1.2), this.height / (high * 1.3));
      this.sliding.target.copy(middle);
      this.frame();
      this.sliding.update();
    }
    this.draw();
  }

  /**
   * Turns the vehicle in three dimensions, shifts it in a view to scale.
   * @param {number} right
   * @param {number} up
   */
  nudge(right, up) {
    if (this.camera === this.persp) {
      const target = this.turning.target;
      const way = new THREE.Spherical().setFromVector3(toYUp(this.persp.position.clone().sub(target)));
      way.theta += right * TURN_RAD;
      way.phi = Math.min(Math.PI - 0.05, Math.max(0.05, way.phi - up * TURN_RAD));
      this.persp.position.copy(target).add(fromYUp(new THREE.Vector3().setFromSpherical(way)));
      this.turning.update();
    } else {
      const by = SHIFT_PX / this.flat.zoom;
      const ways = this.ways();
      const away = new THREE.Vector3(...ways.right).multiplyScalar(-right * by).addScaledVector(new THREE.Vector3(...ways.up), -up * by);
      this.flat.position.add(away);
      this.sliding.target.add(away);
      this.sliding.update();
    }
    this.draw();
  }

  /** @param {number} times how much larger */
  zoom(times) {
    if (this.camera === this.persp) {
      const target = this.turning.target;
      this.persp.position.sub(target).divideScalar(times).add(target);
      this.turning.update();
    } else {
      this.flat.zoom *= times;
      this.flat.updateProjectionMatrix();
      this.sliding.update();
    }
    this.draw();
  }

  frame() {
    this.persp.aspect = this.width / this.height;
    this.persp.updateProjectionMatrix();
    Object.assign(this.flat, { left: -this.width / 2, right: this.width / 2, top: this.height / 2, bottom: -this.height / 2 });
    this.flat.updateProjectionMatrix();
  }

  /**
   * @param {number} width
   * @param {number} height
   */
  resize(width, height) {
    if (width < 2 || height < 2) return;
    this.width = width;
    this.height = height;
    this.renderer.setPixelRatio(Math.min(2, window.devicePixelRatio));
    this.renderer.setSize(width, height, false);
    this.frame();
    if (!this.fitted) this.fit();
    this.draw();
  }

  /**
   * Where a point of the vehicle is on the screen.
   * @param {number[]} point
   */
  project(point) {
    const seen = new THREE.Vector3(point[0], point[1], point[2]).project(this.camera);
    return { x: ((seen.x + 1) / 2) * this.width, y: ((1 - seen.y) / 2) * this.height, behind: seen.z > 1 };
  }

  /** Pixels that a millimetre has on the screen; only where nothing is foreshortened. */
  scale() {
    return this.flat.zoom;
  }

  /** Which way of the vehicle goes to the right and up on the screen. */
  ways() {
    const { towards, up } = VIEWS[this.view] ?? VIEWS.side;
    const dir = new THREE.Vector3(...towards);
    const high = new THREE.Vector3(...up);
    return { right: dir.cross(high).toArray(), up };
  }

  /**
   * The part at a place on the screen; empty if there is none.
   * @param {number} x
   * @param {number} y
   */
  pick(x, y) {
    const ray = new THREE.Raycaster();
    ray.setFromCamera(new THREE.Vector2((x / this.width) * 2 - 1, 1 - (y / this.height) * 2), this.camera);
    const solids = [...this.parts.values()].filter((part) => part.solid && part.group.visible).map((part) => part.solid);
    const planes = this.renderer.clippingPlanes;
    const hits = ray.intersectObjects(solids, false).filter((hit) => planes.every((plane) => plane.distanceToPoint(hit.point) >= 0));
    const solid = hits.find((hit) => this.parts.get(hit.object.userData.id).kind !== 'vehicle') ?? hits[0];
    return solid?.object.userData.id ?? '';
  }
}

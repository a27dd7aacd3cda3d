/** The vessel in space on a canvas. Loaded when it is first wanted; draws only when something has changed. */
import {
  DirectionalLight,
  HemisphereLight,
  PerspectiveCamera,
  Raycaster,
  Scene,
  Spherical,
  Vector2,
  WebGLRenderer,
} from 'three';
import { OrbitControls } from 'three/addons/controls/OrbitControls.js';
import type { Vessel } from '../../index.js';
import { halfLength } from './apart.js';
import { Bodies } from './bodies.js';
import { partsOf, type PartId } from './parts.js';
import type { Shades } from './shades.js';

const viewAngle = 28;
/** From where one looks at first: a little from above. */
const first = { turn: 0.95, tilt: 1.15 };

/** Pixels of a picture that is drawn without graphics hardware for one of the page's: while it moves, and at rest. */
const rough = 0.5;
const fine = 1.5;
/** So long, ms, nothing has moved. */
const pause = 400;

export class VesselScene {
  private readonly renderer: WebGLRenderer;
  private readonly scene = new Scene();
  private readonly camera = new PerspectiveCamera(viewAngle, 1, 10, 100_000);
  private readonly controls: OrbitControls;
  private readonly bodies: Bodies;
  private share = 0;
  private chosen: string | null = null;
  private wanted = 0;
  private rest: ReturnType<typeof setTimeout> | undefined;

  /** `isSlow`: without graphics hardware. */
  constructor(
    private readonly canvas: HTMLCanvasElement,
    private vessel: Vessel,
    private readonly isSlow: boolean,
  ) {
    this.renderer = new WebGLRenderer({ canvas, antialias: !isSlow, alpha: true });
    this.bodies = new Bodies(vessel);
    // the axis upright
    this.bodies.group.rotation.x = -Math.PI / 2;
    const lamp = new DirectionalLight('#ffffff', 2.2);
    lamp.position.set(-0.5, 0.7, 0.6);
    this.camera.add(lamp);
    this.scene.add(this.bodies.group, this.camera, new HemisphereLight('#ffffff', '#8a8a8a', 1.6));
    this.controls = new OrbitControls(this.camera, canvas);
    this.controls.enablePan = false;
    this.controls.addEventListener('change', this.draw);
    this.reset();
  }

  show(vessel: Vessel): void {
    this.vessel = vessel;
    this.bodies.show(vessel, partsOf(vessel));
    this.bodies.place(this.share, this.chosen);
    // at once, and not with the next frame: the picture beside it changes in this one; but first it gets its size and shades
    if (this.renderer.info.render.frame > 0) this.drawNow();
    else this.draw();
  }

  place(share: number, chosen: string | null): void {
    const grown = halfLength(this.vessel, share) / halfLength(this.vessel, this.share);
    this.share = share;
    this.chosen = chosen;
    this.bodies.place(share, chosen);
    // what is taken apart stays in the picture
    if (grown !== 1) this.look((place) => void (place.radius *= grown));
    this.draw();
  }

  paint(shades: Shades): void {
    this.bodies.paint(shades);
    this.draw();
  }

  resize(width: number, height: number): void {
    this.renderer.setPixelRatio(this.fineness(false));
    this.renderer.setSize(width, height, false);
    this.camera.aspect = width / height;
    this.camera.updateProjectionMatrix();
    this.draw();
  }

  /** Radians to the right and upwards. */
  turn(right: number, up: number): void {
    this.look((place) => {
      place.theta -= right;
      place.phi = Math.max(0.01, Math.min(Math.PI - 0.01, place.phi + up));
    });
  }

  zoom(factor: number): void {
    this.look((place) => void (place.radius /= factor));
  }

  /** As at first. */
  reset(): void {
    const reach = Math.hypot(halfLength(this.vessel, this.share), this.vessel.ring.closesAt / 2);
    const narrow = Math.min(1, this.camera.aspect);
    const distance = (1.05 * reach) / Math.sin((viewAngle * Math.PI) / 360) / narrow;
    this.look((place) => place.set(distance, first.tilt, first.turn));
  }

  /** The body under a place on the canvas, in shares of its width and height from the upper left. */
  bodyAt(across: number, down: number): PartId | null {
    const ray = new Raycaster();
    this.scene.updateMatrixWorld();
    ray.setFromCamera(new Vector2(2 * across - 1, 1 - 2 * down), this.camera);
    const [hit] = ray.intersectObjects([...this.bodies.meshes], false);
    return hit ? (this.bodies.partOf(hit.object)?.id ?? null) : null;
  }

  dispose(): void {
    cancelAnimationFrame(this.wanted);
    clearTimeout(this.rest);
    this.controls.dispose();
    this.bodies.dispose();
    this.renderer.dispose();
  }

  private look(change: (place: Spherical) => void): void {
    const place = new Spherical().setFromVector3(this.camera.position);
    change(place);
    this.camera.position.setFromSpherical(place);
    this.controls.update();
    this.draw();
  }

  private readonly draw = (): void => {
    // what moves again is not at rest
    clearTimeout(this.rest);
    if (this.wanted === 0) this.wanted = requestAnimationFrame(this.drawNow);
  };

  private readonly drawNow = (): void => {
    cancelAnimationFrame(this.wanted);
    this.wanted = 0;
    this.render(false);
    clearTimeout(this.rest);
    if (this.isSlow) this.rest = setTimeout(() => this.render(true), pause);
  };

  private render(atRest: boolean): void {
    const fineness = this.fineness(atRest);
    // setting it makes the canvas anew
    if (this.renderer.getPixelRatio() !== fineness) this.renderer.setPixelRatio(fineness);
    this.renderer.render(this.scene, this.camera);
    this.canvas.dataset['drawn'] = String(Number(this.canvas.dataset['drawn'] ?? 0) + 1);
  }

  /** Pixels drawn for one of the page's. */
  private fineness(atRest: boolean): number {
    if (!this.isSlow) return Math.min(2, window.devicePixelRatio);
    return atRest ? fine : rough;
  }
}

import { type PerspectiveCamera, Spherical, Vector3 } from 'three';
import type { Vec3 } from '../../engine/math/vector';
import { FAN_RIM } from '../maths/fan';
import { cameraAxes, centreTarget, VIEWS, type View } from '../maths/fitView';
import type { StageEye, StageKit } from '../stageKit';

/** What the camera control (drei's OrbitControls) must offer. */
export interface OrbitLike {
  readonly target: Vector3;
  enabled: boolean;
  minDistance: number;
  maxDistance: number;
  update(): void;
}

const MARGIN = 0.1;
/** The three-quarter view is fitted to this many fan radii beyond the bolt: a long blade runs out of the picture. */
const BLADE_SHOWN = 1.5;
/** How high the eye stands over the disc, radians. */
const DISC_TILT = 0.62;
/** A head that has grown or shrunk by more than this since the view was fitted is fitted anew. */
const REFIT = 1.6;

/**
 * The camera by name: fits the head from a direction, turns and zooms by key. It remembers whether a person has moved
 * the camera since, so that a stage that changes its size keeps either the fitted view or the person's own.
 */
export class ViewControl {
  orbit: OrbitLike | null = null;
  view: View = 'threeQuarter';
  /** Moved by hand since the last fit. */
  moved = false;
  private fittedSize = 0;

  constructor(private readonly kit: StageKit) {}

  attach(orbit: OrbitLike | null): void {
    this.orbit = orbit;
  }

  /** While something else has the pointer the control need not look in every picture where the camera is. */
  rest(resting: boolean): void {
    if (this.orbit) this.orbit.enabled = !resting;
  }

  /** A person has moved the camera: it stays where it is. */
  noteMoved(): void {
    this.moved = true;
  }

  /** Looks from a named direction at the whole head. */
  show(view: View): void {
    const { eye } = this.kit;
    if (!eye || !this.orbit) return;
    this.view = view;
    this.moved = false;
    const aspect = eye.host.clientWidth / Math.max(1, eye.host.clientHeight);
    const { target, position } = this.fitted(eye.camera, aspect);
    this.fittedSize = this.kit.bounds().getSize(new Vector3()).length();
    this.orbit.target.copy(target);
    eye.camera.position.copy(position);
    this.settle(eye);
  }

  /** The whole disc round the shaft, from above and aside: room for a head that goes round. */
  showDisc(): void {
    const { eye } = this.kit;
    if (!eye || !this.orbit) return;
    const aspect = eye.host.clientWidth / Math.max(1, eye.host.clientHeight);
    const tangent = Math.tan((eye.camera.fov * Math.PI) / 360);
    const radius = this.kit.extent.outboard * (1 + MARGIN);
    const across = radius / (tangent * aspect);
    const down = (radius * Math.sin(DISC_TILT)) / tangent;
    // The near rim of the disc comes toward the eye.
    const distance = Math.max(across, down) + radius * Math.cos(DISC_TILT);
    this.moved = true;
    this.orbit.target.set(0, 0, 0);
    const [c, s] = [Math.cos(DISC_TILT), Math.sin(DISC_TILT)];
    eye.camera.position.set(c * distance * 0.6, -c * distance * 0.8, s * distance);
    this.settle(eye);
  }

  /** From where the named view that was last shown fits the head into a picture of that aspect. */
  fitted({ fov }: PerspectiveCamera, aspect: number): { target: Vector3; position: Vector3 } {
    const from = VIEWS[this.view];
    const points = this.points(this.view === 'threeQuarter');
    const tangent = Math.tan((fov * Math.PI) / 360);
    const middle = this.kit.bounds().getCenter(new Vector3());
    const start: Vec3 = [middle.x, middle.y, middle.z];
    const fit = centreTarget(points, start, from, tangent, aspect, MARGIN);
    const target = new Vector3(...fit.target);
    const { back } = cameraAxes(from);
    // Straight down is a hair off the pole, so that up on the screen is the leading side.
    const tilt = this.view === 'above' ? 1e-4 : 0;
    const way = new Vector3(back[0], back[1] - tilt, back[2]);
    return { target, position: target.clone().addScaledVector(way, fit.distance) };
  }

  /** After the head, or the stage, has changed its size. */
  refit(): void {
    const size = this.kit.bounds().getSize(new Vector3()).length();
    const ratio = size / Math.max(1e-6, this.fittedSize);
    if (!this.moved || ratio > REFIT || ratio < 1 / REFIT) this.show(this.view);
  }

  /** Turns the camera about its target, degrees: about the shaft, and up over it. */
  turn(aroundDeg: number, overDeg: number): void {
    this.swing((arm) => {
      arm.theta += (aroundDeg * Math.PI) / 180;
      arm.phi = Math.min(Math.PI - 0.01, Math.max(0.01, arm.phi - (overDeg * Math.PI) / 180));
    });
  }

  zoom(factor: number): void {
    this.swing((arm) => {
      const { minDistance, maxDistance } = this.orbit ?? { minDistance: 0, maxDistance: 1e9 };
      arm.radius = Math.min(maxDistance, Math.max(minDistance, arm.radius / factor));
    });
  }

  /** Near and far follow the distance, for parts of millimetres and of metres alike. */
  setDepth(eye: StageEye): void {
    if (!this.orbit) return;
    const distance = eye.camera.position.distanceTo(this.orbit.target);
    const reach = this.fittedSize * 3 + distance * 4;
    if (Math.abs(eye.camera.far - reach) < 0.05 * reach) return;
    eye.camera.near = Math.max(distance * 0.02, reach * 1e-4);
    eye.camera.far = reach;
    eye.camera.updateProjectionMatrix();
  }

  private swing(change: (arm: Spherical) => void): void {
    const { eye } = this.kit;
    if (!eye || !this.orbit) return;
    this.moved = true;
    const { target } = this.orbit;
    // Spherical counts its polar angle from Y: turn Z up into it and back.
    const arm = eye.camera.position.clone().sub(target);
    const round = new Spherical().setFromVector3(new Vector3(arm.x, arm.z, -arm.y));
    change(round);
    const out = new Vector3().setFromSpherical(round);
    eye.camera.position.set(target.x + out.x, target.y - out.z, target.z + out.y);
    this.settle(eye);
  }

  private settle(eye: StageEye): void {
    if (!this.orbit) return;
    this.orbit.minDistance = this.fittedSize * 0.08;
    this.orbit.maxDistance = this.fittedSize * 8;
    this.setDepth(eye);
    this.orbit.update();
    eye.invalidate();
  }

  /** Corners of the parts' box, and the fan with its pointer. */
  private points(near: boolean): Vec3[] {
    const { min, max } = this.kit.bounds();
    const radius = this.kit.pointerRadius();
    if (near) max.x = Math.min(max.x, this.kit.fanStation + BLADE_SHOWN * radius);
    const points: Vec3[] = [];
    for (const x of [min.x, max.x]) {
      for (const y of [min.y, max.y]) for (const z of [min.z, max.z]) points.push([x, y, z]);
    }
    const { base, reach } = this.kit.fanSize();
    for (let angle = -90; angle <= 90; angle += 30) {
      // The knob is seldom at the ends of its travel: there the fan's own rim must fit.
      const out = Math.abs(angle) > 60 ? base + reach * FAN_RIM : radius;
      const c = Math.cos((angle * Math.PI) / 180);
      const s = Math.sin((angle * Math.PI) / 180);
      points.push([this.kit.fanStation, out * c, out * s]);
    }
    return points;
  }
}

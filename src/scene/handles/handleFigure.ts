import {
  type BufferGeometry,
  type Camera,
  CircleGeometry,
  ConeGeometry,
  CylinderGeometry,
  Group,
  Mesh,
  MeshBasicMaterial,
  Quaternion,
  RingGeometry,
  Vector3,
} from 'three';
import type { Palette } from '../drawing/palette';
import type { HandleSpec } from './handleSpec';

/** Sizes in screen pixels. */
const SHAFT = { from: 5, to: 24, radius: 1.4 };
const HEAD = { from: 22, to: 36, radius: 6 };
const GRAB_AT = 26;
/** Arrows that move a whole part start farther out, clear of the arrows on its dimensions. */
const MOVE_START = 30;
const KNOB = 7;

const Y = new Vector3(0, 1, 0);
const turn = new Quaternion();

/** Shapes and colours that all handles of a stage share. Drawn over everything, with a rim in the page's colour. */
export class HandleKit {
  readonly arrow = [
    new CylinderGeometry(SHAFT.radius, SHAFT.radius, SHAFT.to - SHAFT.from, 8).translate(
      0,
      (SHAFT.from + SHAFT.to) / 2,
      0,
    ),
    new ConeGeometry(HEAD.radius, HEAD.to - HEAD.from, 20).translate(
      0,
      (HEAD.from + HEAD.to) / 2,
      0,
    ),
  ];
  readonly arrowRim = [
    new CylinderGeometry(
      SHAFT.radius + 1.5,
      SHAFT.radius + 1.5,
      SHAFT.to - SHAFT.from,
      8,
    ).translate(0, (SHAFT.from + SHAFT.to) / 2, 0),
    new ConeGeometry(HEAD.radius + 2.6, HEAD.to - HEAD.from + 5, 20).translate(
      0,
      (HEAD.from + HEAD.to) / 2,
      0,
    ),
  ];
  readonly knob = [new RingGeometry(KNOB - 2.6, KNOB, 32)];
  readonly knobRim = [new CircleGeometry(KNOB + 1.6, 32)];
  readonly turner = [
    new ConeGeometry(4.5, 8, 16).translate(0, 11, 0),
    new ConeGeometry(4.5, 8, 16).rotateZ(Math.PI).translate(0, -11, 0),
    new CylinderGeometry(4.5, 4.5, 5, 16),
  ];
  readonly turnerRim = [
    new ConeGeometry(6.6, 12, 16).translate(0, 11, 0),
    new ConeGeometry(6.6, 12, 16).rotateZ(Math.PI).translate(0, -11, 0),
    new CylinderGeometry(6.2, 6.2, 8, 16),
  ];
  readonly accent = overlayMaterial();
  readonly rim = overlayMaterial();

  paint(palette: Palette): void {
    this.accent.color.set(palette.accent);
    this.rim.color.set(palette.surface);
  }

  dispose(): void {
    const { arrow, arrowRim, knob, knobRim, turner, turnerRim } = this;
    for (const shape of [arrow, arrowRim, knob, knobRim, turner, turnerRim].flat()) shape.dispose();
    this.accent.dispose();
    this.rim.dispose();
  }
}

function overlayMaterial(): MeshBasicMaterial {
  return new MeshBasicMaterial({ depthTest: false, depthWrite: false, transparent: true });
}

/** The drawing of one handle: an arrow, a pair of arrowheads for a turn, or the pitch pointer's ring. */
export class HandleFigure {
  readonly object = new Group();
  readonly foot = new Vector3();
  readonly knob = new Vector3();
  private readonly shape: 'arrow' | 'turner' | 'ring';
  private readonly way = new Vector3();
  private readonly start: number;

  constructor(kit: HandleKit, spec: HandleSpec) {
    this.shape = spec.look === 'pitch' ? 'ring' : spec.motion.kind === 'turn' ? 'turner' : 'arrow';
    this.start = spec.look === 'move' ? MOVE_START : 0;
    const shapes = { arrow: kit.arrow, turner: kit.turner, ring: kit.knob }[this.shape];
    const rims = { arrow: kit.arrowRim, turner: kit.turnerRim, ring: kit.knobRim }[this.shape];
    this.add(rims, kit.rim, 20);
    this.add(shapes, kit.accent, 21);
  }

  /** `foot`: where the handle stands; `way`: unit vector along its motion. World. */
  pose(foot: Vector3, way: Vector3): void {
    this.foot.copy(foot);
    this.way.copy(way);
  }

  /** Sizes it for the screen and finds the middle of what is grabbed. */
  size(camera: Camera, mmPerPixel: number, emphasis: number): void {
    const { object, foot, way, start, knob } = this;
    object.scale.setScalar(mmPerPixel * emphasis);
    if (this.shape === 'ring') {
      object.position.copy(foot);
      object.quaternion.copy(camera.quaternion);
      knob.copy(foot);
      return;
    }
    object.quaternion.copy(turn.setFromUnitVectors(Y, way));
    object.position.copy(foot).addScaledVector(way, start * mmPerPixel);
    knob.copy(foot);
    if (this.shape === 'arrow') knob.addScaledVector(way, (start + GRAB_AT) * mmPerPixel);
  }

  private add(shapes: readonly BufferGeometry[], material: MeshBasicMaterial, order: number): void {
    for (const shape of shapes) {
      const mesh = new Mesh(shape, material);
      mesh.renderOrder = order;
      mesh.frustumCulled = false;
      this.object.add(mesh);
    }
  }
}

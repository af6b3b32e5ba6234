import {
  type Camera,
  CircleGeometry,
  ConeGeometry,
  CylinderGeometry,
  Group,
  Matrix4,
  MeshBasicMaterial,
  Quaternion,
  RingGeometry,
  Vector3,
} from 'three';
import type { Palette } from '../drawing/palette';
import { joined, Swarm } from '../drawing/swarm';
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
const place = new Vector3();
const scale = new Vector3();
const matrix = new Matrix4();

type Shape = 'arrow' | 'turner' | 'ring';
const SHAPES: readonly Shape[] = ['arrow', 'turner', 'ring'];

/**
 * Shapes and colours that all handles of a stage share, drawn over everything with a rim in the page's colour: all handles of
 * a shape in two drawings, first all rims. Shown anew at each drawn frame, between `begin` and `end`.
 */
export class HandleKit {
  readonly object = new Group();
  private readonly shapes = {
    arrow: joined(arrow(0, 0)),
    turner: joined(turner(4.5, 8, 5)),
    ring: joined([new RingGeometry(KNOB - 2.6, KNOB, 32)]),
  };
  private readonly rims = {
    arrow: joined(arrow(1.5, 2.6)),
    turner: joined(turner(6.6, 12, 8, 6.2)),
    ring: joined([new CircleGeometry(KNOB + 1.6, 32)]),
  };
  private readonly accent = overlayMaterial();
  private readonly rim = overlayMaterial();
  private readonly swarms = SHAPES.map((shape) => ({
    rim: new Swarm(this.rims[shape], this.rim, 20),
    face: new Swarm(this.shapes[shape], this.accent, 21),
  }));

  constructor() {
    for (const { rim, face } of this.swarms) this.object.add(rim.object, face.object);
  }

  paint(palette: Palette): void {
    this.accent.color.set(palette.accent);
    this.rim.color.set(palette.surface);
  }

  begin(): void {
    for (const { rim, face } of this.swarms) {
      rim.begin();
      face.begin();
    }
  }

  add(shape: Shape, at: Matrix4): void {
    const { rim, face } = this.swarms[SHAPES.indexOf(shape)];
    rim.add(at);
    face.add(at);
  }

  end(): void {
    for (const { rim, face } of this.swarms) {
      rim.end();
      face.end();
    }
  }

  dispose(): void {
    for (const { rim, face } of this.swarms) {
      rim.dispose();
      face.dispose();
    }
    for (const shape of SHAPES) {
      this.shapes[shape].dispose();
      this.rims[shape].dispose();
    }
    this.accent.dispose();
    this.rim.dispose();
  }
}

/** Shaft and head along y, so much wider and longer. */
function arrow(wider: number, longer: number) {
  const shaft = SHAFT.radius + wider;
  const length = SHAFT.to - SHAFT.from;
  const head = HEAD.to - HEAD.from + (longer > 0 ? 5 : 0);
  return [
    new CylinderGeometry(shaft, shaft, length, 8).translate(0, (SHAFT.from + SHAFT.to) / 2, 0),
    new ConeGeometry(HEAD.radius + longer, head, 20).translate(0, (HEAD.from + HEAD.to) / 2, 0),
  ];
}

/** Two heads along y, back to back on a stub. */
function turner(radius: number, height: number, stub: number, stubRadius = radius) {
  return [
    new ConeGeometry(radius, height, 16).translate(0, 11, 0),
    new ConeGeometry(radius, height, 16).rotateZ(Math.PI).translate(0, -11, 0),
    new CylinderGeometry(stubRadius, stubRadius, stub, 16),
  ];
}

function overlayMaterial(): MeshBasicMaterial {
  return new MeshBasicMaterial({ depthTest: false, depthWrite: false, transparent: true });
}

/** One handle as it is drawn: an arrow, a pair of arrowheads for a turn, or the pitch pointer's ring. */
export class HandleFigure {
  readonly foot = new Vector3();
  readonly knob = new Vector3();
  private readonly shape: Shape;
  private readonly way = new Vector3();
  private readonly start: number;

  constructor(spec: HandleSpec) {
    this.shape = spec.look === 'pitch' ? 'ring' : spec.motion.kind === 'turn' ? 'turner' : 'arrow';
    this.start = spec.look === 'move' ? MOVE_START : 0;
  }

  /** `foot`: where the handle stands; `way`: unit vector along its motion. World. */
  pose(foot: Vector3, way: Vector3): void {
    this.foot.copy(foot);
    this.way.copy(way);
  }

  /** Draws it at the size of the screen and finds the middle of what is grabbed. */
  show(kit: HandleKit, camera: Camera, mmPerPixel: number, emphasis: number): void {
    const { foot, way, start, knob } = this;
    knob.copy(foot);
    place.copy(foot);
    if (this.shape === 'ring') turn.copy(camera.quaternion);
    else {
      turn.setFromUnitVectors(Y, way);
      place.addScaledVector(way, start * mmPerPixel);
      if (this.shape === 'arrow') knob.addScaledVector(way, (start + GRAB_AT) * mmPerPixel);
    }
    kit.add(this.shape, matrix.compose(place, turn, scale.setScalar(mmPerPixel * emphasis)));
  }
}

import { createContext, useContext } from 'react';
import {
  Box3,
  Group,
  type Object3D,
  type PerspectiveCamera,
  Vector3,
  type WebGLRenderer,
} from 'three';
import type { RotorConditions } from '../engine/feathering/rotor';
import type { Pose } from '../engine/math/pose';
import type { Vec3 } from '../engine/math/vector';
import type { Layer } from '../state/settings';
import { LabelBoard } from './drawing/labels';
import { LineBoard } from './drawing/lineBoard';
import type { Palette } from './drawing/palette';
import { MM, placeObjectMm } from './drawing/place';
import { HandleBoard } from './handles/handleBoard';
import { type Extent, measureBoxes, START_EXTENT, steadyExtent } from './maths/extent';
import { FAN_RIM, type FanSize, fanSize } from './maths/fan';
import { gripPose } from './maths/gripFrame';
import { Crowds } from './parts/crowd';
import { Finishes } from './parts/finishes';
import type { PartBody } from './parts/partBody';

/** What looks at the stage: there once the canvas is. */
export interface StageEye {
  readonly camera: PerspectiveCamera;
  readonly renderer: WebGLRenderer;
  /** The element that the canvas fills; pointer positions are taken relative to it. */
  readonly host: HTMLElement;
  invalidate(): void;
}

/**
 * What the pieces of one stage share: its frames, its parts' bodies, labels and handles. A plain object made once a
 * stage, handed down by React context and written to outside React.
 */
export class StageKit {
  /** World: the rotor frame in mm. */
  readonly root = new Group();
  /** The grip frame at flat pitch, mm: x along the feathering axis, z up (fan, ghosts). */
  readonly axisFrame = new Group();
  /** The grip frame, mm: turns with pitch. */
  readonly gripFrame = new Group();
  /** Metres, turning with pitch: bodies of parts on the grip. */
  readonly gripBodies = new Group();
  /** What stands still while the rotor goes round, mm; turned back against it where it is looked at from outside. */
  readonly roomFrame = new Group();
  /** Metres in the rotor frame: bodies of rods. */
  readonly rotorBodies = new Group();

  readonly bodies = new Map<string, PartBody>();
  readonly finishes = new Finishes();
  /** All lines; drawn beside the root, after it. */
  readonly lines = new LineBoard();
  /** Bodies that look alike, drawn together. */
  readonly crowds = new Crowds(this.finishes);
  readonly labels = new LabelBoard();
  readonly handles = new HandleBoard();
  /** Done before each drawn frame, after the camera has moved. */
  readonly frameTasks = new Set<(eye: StageEye, width: number, height: number) => void>();
  /** Everything that draws round the parts, to be called when bodies have come or gone. */
  readonly redraws = new Set<() => void>();
  /** What fits the view to them then. */
  readonly refits = new Set<() => void>();
  /** Paints each layer by a palette. */
  readonly painters = new Set<(palette: Palette) => void>();
  /** What helps the hand and is left out of pictures: handles, picked points. */
  readonly aids = new Set<Object3D>();
  eye: StageEye | null = null;
  private settled = '';
  /** Lengths by which layers draw; follow the parts, but do not pump while something is dragged. */
  extent: Extent = START_EXTENT;
  /** Station of fan and pitch pointer along the feathering axis, mm. */
  fanStation = 0;
  /** Scales of the pull arrows, set by their layer and read by the key in the corner. */
  readonly pullScale = {
    visible: false,
    /** The pale arrows are whole pulls, not the shares that the bearings carry. */
    whole: false,
    still: 0,
    turning: 0,
    stillMmPerN: 0,
    turningMmPerN: 0,
  };
  /** Arrows of the pulls that are being added up; 0 while they are not. */
  pullArrows = 0;
  /** Of the rotor, rad/s. */
  angularSpeed = 0;
  /** X_RG at the pitch shown. */
  X_RG: Pose;

  constructor() {
    this.X_RG = gripPose({ angularSpeed: 0, torqueOffset: 0, precone: 0 as never }, 0);
    this.axisFrame.matrixAutoUpdate = false;
    this.gripFrame.matrixAutoUpdate = false;
    this.gripBodies.scale.setScalar(MM);
    this.rotorBodies.scale.setScalar(MM);
    for (const still of [this.root, this.gripBodies, this.rotorBodies]) {
      still.updateMatrix();
      still.matrixAutoUpdate = false;
    }
    this.gripBodies.add(this.crowds.object);
    this.gripFrame.add(this.gripBodies);
    this.root.add(this.axisFrame, this.gripFrame, this.rotorBodies, this.roomFrame);
  }

  setEye(eye: StageEye | null): void {
    this.eye = eye;
  }

  /** Makes a handle stand out, or none. */
  heat(key: string | null): void {
    if (this.handles.hot === key) return;
    this.handles.hot = key;
    this.eye?.invalidate();
  }

  /** Colours from the page's tokens. */
  paint(palette: Palette): void {
    this.finishes.paint(palette);
    for (const body of this.bodies.values()) body.paint();
  }

  /** Parts and layers. */
  paintAll(palette: Palette): void {
    this.paint(palette);
    for (const paint of this.painters) paint(palette);
  }

  /** Unit vector of the push rod from the arm's ball to the slider's, rotor frame; null out of reach and without. */
  rodAxis: Vec3 | null = null;
  /** Centre of the slider's ball as it is drawn, world, mm; null where none is drawn. */
  sliderBall: Vec3 | null = null;

  /** Turns the frames to a pitch. Called before everything that draws. */
  turn(rotor: RotorConditions, pitchDeg: number, rodAxis: Vec3 | null): void {
    this.rodAxis = rodAxis;
    this.angularSpeed = rotor.angularSpeed;
    this.X_RG = gripPose(rotor, pitchDeg);
    placeObjectMm(this.gripFrame, this.X_RG);
    placeObjectMm(this.axisFrame, gripPose(rotor, 0));
  }

  /** Takes the measure of the parts as they are drawn, before the layers draw round them. */
  measure(dragging: boolean): void {
    const boxes = [];
    for (const body of this.bodies.values()) {
      const box = body.hidden ? null : body.boxInParent();
      if (box && body.mesh.parent === this.gripBodies) boxes.push(box);
    }
    this.extent = steadyExtent(this.extent, measureBoxes(boxes), dragging);
  }

  /** Station of fan and pitch pointer, mm. */
  standAt(stationMm: number): void {
    this.fanStation = stationMm;
  }

  /** After bodies have come or gone (`key` names them): the rest is drawn round those that are there now. */
  settle(key: string): void {
    if (key === this.settled) return;
    this.settled = key;
    this.measure(false);
    this.redraw();
  }

  redraw(): void {
    for (const redraw of this.redraws) redraw();
    for (const refit of this.refits) refit();
    this.eye?.invalidate();
  }

  /** A drag is over: measures that the head has shrunk under follow it, the view stays. */
  relax(): void {
    const held = this.extent;
    this.measure(false);
    const names = ['outboard', 'height', 'clearance'] as const;
    if (names.every((name) => this.extent[name] === held[name])) return;
    for (const redraw of this.redraws) redraw();
    this.eye?.invalidate();
  }

  fanSize(): FanSize {
    return fanSize(this.extent.clearance);
  }

  /** Where the knob of the pitch pointer sits, from the feathering axis, mm. */
  pointerRadius(): number {
    const { base, reach } = this.fanSize();
    return base + reach * (FAN_RIM + 0.45);
  }

  /** World box of a part as it is drawn, mm; null when there is none. */
  boxOf(id: string): Box3 | null {
    const body = this.bodies.get(id);
    if (!body?.mesh.geometry.boundingBox) return null;
    body.mesh.updateWorldMatrix(true, false);
    return new Box3().copy(body.mesh.geometry.boundingBox).applyMatrix4(body.mesh.matrixWorld);
  }

  /** The same, by the points that were last handed to the card. */
  drawnBoxOf(id: string): Box3 | null {
    const body = this.bodies.get(id);
    return (body && this.crowds.boxOf(body)) ?? this.boxOf(id);
  }

  /** World box of all visible parts, mm; a small box round the origin when there are none. */
  bounds(): Box3 {
    const all = new Box3();
    for (const [id, body] of this.bodies) {
      // The view is set for the head: a plane goes on without end.
      const box = body.hidden || body.isSpace ? null : this.boxOf(id);
      if (box) all.union(box);
    }
    return all.isEmpty() ? new Box3(new Vector3(-20, -20, -20), new Vector3(60, 20, 20)) : all;
  }
}

/** Layers as the stage lists them. */
export const STAGE_LAYERS: readonly Layer[] = [
  'pull',
  'ellipse',
  'fan',
  'ghosts',
  'plane',
  'axes',
  'centre',
  'bearings',
  'clearance',
];

export const StageContext = createContext<StageKit | null>(null);

export function useStageKit(): StageKit {
  const kit = useContext(StageContext);
  if (!kit) throw new Error('useStageKit(): there is no stage above');
  return kit;
}

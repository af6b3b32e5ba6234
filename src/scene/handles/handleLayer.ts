import { Group, Vector3 } from 'three';
import type { Pose } from '../../engine/math/pose';
import { t } from '../../messages';
import { showDegrees } from '../../state/quantities';
import type { HeadReading } from '../../state/reading';
import type { Session } from '../../state/session';
import type { StageLayer } from '../layers/stageLayer';
import { gripPose, partPose } from '../maths/gripFrame';
import type { StageEye, StageKit } from '../stageKit';
import type { PosedHandle } from './handleBoard';
import { HandleFigure, HandleKit } from './handleFigure';
import type { HandleSpec } from './handleSpec';
import { handleSpecs } from './handleSpecs';
import { handleFrame, poseHandle, shiftMotion } from './poseHandle';
import { mmPerPixel, pixelOf } from './projection';

/** Handles under the pointer or the focus are drawn this much larger. */
const EMPHASIS = 1.25;

/**
 * The handles of the selected part and the pitch pointer's knob: posed with the head, sized for the screen at every
 * frame, listed on the kit's board for the pointer.
 */
export function createHandleLayer(kit: StageKit, session: Session): StageLayer {
  const group = new Group();
  kit.root.add(group);
  kit.aids.add(group);
  const shapes = new HandleKit();
  group.add(shapes.object);
  const figures = new Map<string, HandleFigure>();
  const pitchLabel = kit.labels.add('stage-label stage-label-accent', 9);
  pitchLabel.visible = true;
  const foot = new Vector3();
  const way = new Vector3();

  function figureOf(spec: HandleSpec): HandleFigure {
    const found = figures.get(spec.key);
    if (found) return found;
    const made = new HandleFigure(spec);
    figures.set(spec.key, made);
    return made;
  }

  function poseAll(specs: readonly HandleSpec[], reading: HeadReading): PosedHandle[] {
    const level = gripPose(reading.rotor, 0);
    return specs.map((spec) => {
      const placed = spec.partId ? reading.part(spec.partId) : undefined;
      const X_RP: Pose | null = placed ? partPose(placed, kit.X_RG, kit.rodAxis) : null;
      const aside = spec.parameter === 'offsetMm' ? besidePart(kit, spec) : null;
      const motion = aside ? shiftMotion(spec.motion, aside) : spec.motion;
      const place = poseHandle(motion, handleFrame(spec, X_RP, kit.X_RG, level));
      const figure = figureOf(spec);
      figure.pose(foot.set(...place.foot), way.set(...place.way));
      return { spec, line: place.line, foot: figure.foot, knob: figure.knob, spot: null };
    });
  }

  function eachFrame(eye: StageEye, width: number, height: number): void {
    const { active, hot } = kit.handles;
    // Nobody drags what goes round.
    const { open, eye: looker } = session.pullsShow.shown;
    const away = open && looker === 'outside';
    group.visible = !away;
    pitchLabel.visible = !away;
    shapes.begin();
    for (const handle of kit.handles.handles) {
      const { key } = handle.spec;
      const scale = mmPerPixel(eye.camera, handle.foot, height);
      const emphasis = key === hot || key === active ? EMPHASIS : 1;
      figures.get(key)?.show(shapes, eye.camera, scale, emphasis);
      handle.spot = away ? null : pixelOf(eye.camera, handle.knob, width, height);
    }
    shapes.end();
  }
  kit.frameTasks.add(eachFrame);

  return {
    update({ reading, state }) {
      const pointer = { stationMm: kit.fanStation, radiusMm: kit.pointerRadius() };
      const handles = poseAll(handleSpecs(session, pointer), reading);
      kit.handles.take(handles);
      for (const key of figures.keys()) {
        if (!handles.some((handle) => handle.spec.key === key)) figures.delete(key);
      }
      const knob = handles[handles.length - 1];
      pitchLabel.at.copy(knob.foot);
      pitchLabel.offset = [0, -22];
      pitchLabel.text = t('stage.pitch', { angle: showDegrees(state.pitchDeg) });
    },
    paint(palette) {
      shapes.paint(palette);
    },
    dispose() {
      kit.frameTasks.delete(eachFrame);
      kit.handles.take([]);
      kit.aids.delete(group);
      group.removeFromParent();
      figures.clear();
      shapes.dispose();
      kit.labels.remove(pitchLabel);
    },
  };
}

/** To the inboard side of a part, at half its height, so that the arrow along its socket stands clear of the others. */
function besidePart(kit: StageKit, spec: HandleSpec): readonly [number, number, number] | null {
  const box = spec.partId ? kit.bodies.get(spec.partId)?.mesh.geometry.boundingBox : null;
  if (!box) return null;
  return [box.min.x, (box.min.y + box.max.y) / 2, (box.min.z + box.max.z) / 2];
}

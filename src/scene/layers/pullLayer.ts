import type { Session } from '../../state/session';
import { Arrows } from '../drawing/arrows';
import { steadyScale } from '../maths/niceScale';
import { partPulls, turningBound } from '../maths/pull';
import type { StageKit } from '../stageKit';
import type { StageLayer } from './stageLayer';

/** Longest arrows at full scale, mm. */
const PULL_LENGTH = 36;
const TURNING_LENGTH = 24;

/**
 * The pull on every part: a pale arrow for the share that bearings carry, a vivid one for the share that turns the
 * grip. The second is drawn at a scale of its own, being far smaller; both scales stand in the corner.
 */
export function createPullLayer(kit: StageKit, session: Session): StageLayer {
  const still = new Arrows(kit.lines, 2, 0.6);
  const turning = new Arrows(kit.lines, 3, 1);
  kit.root.add(still.object, turning.object);

  return {
    update({ reading, state }, changes) {
      // Where they are added one by one, another layer draws them.
      const visible = state.settings.layers.pull && !session.pullsShow.shown.open;
      still.object.visible = visible;
      turning.object.visible = visible;
      kit.pullScale.visible = visible;
      if (!visible || !(changes.design || changes.pitch || changes.settings)) return;
      let largest = 0;
      let bound = 0;
      const pulls = [];
      for (const id of reading.order) {
        const placed = reading.part(id);
        if (!placed || placed.part.hidden || placed.carriedBy !== 'grip') continue;
        bound = Math.max(bound, turningBound(placed.moments_G, reading.rotor));
        for (const pull of partPulls(placed.moments_G, reading.rotor, kit.X_RG)) {
          largest = Math.max(largest, Math.hypot(...pull.still));
          pulls.push(pull);
        }
      }
      const scales = kit.pullScale;
      scales.still = steadyScale(scales.still, largest, state.gesture);
      scales.turning = steadyScale(scales.turning, bound, state.gesture);
      scales.stillMmPerN = PULL_LENGTH / scales.still;
      scales.turningMmPerN = TURNING_LENGTH / scales.turning;
      still.begin();
      turning.begin();
      for (const pull of pulls) {
        still.add(pull.at, pull.still, scales.stillMmPerN);
        turning.add(pull.at, pull.turning, scales.turningMmPerN);
      }
      still.end();
      turning.end();
    },
    paint(palette) {
      still.paint(palette.pull);
      turning.paint(palette.pull);
    },
    dispose() {
      still.object.removeFromParent();
      turning.object.removeFromParent();
      still.dispose();
      turning.dispose();
    },
  };
}

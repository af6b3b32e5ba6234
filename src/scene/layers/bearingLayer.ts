import { t } from '../../messages';
import { displayForce, show } from '../../state/quantities';
import type { StageLabel } from '../drawing/labels';
import { MM } from '../drawing/place';
import type { StageKit } from '../stageKit';
import type { StageLayer } from './stageLayer';

/** Each bearing with what it carries at the pitch of the pointer and the design's speed. */
export function createBearingLayer(kit: StageKit): StageLayer {
  const words = new Map<string, StageLabel>();

  function wordOf(id: string): StageLabel {
    let word = words.get(id);
    if (!word) {
      word = kit.labels.add('stage-label', 4);
      words.set(id, word);
    }
    return word;
  }

  return {
    update({ reading, state }, changes) {
      if (!(changes.design || changes.pitch || changes.settings)) return;
      for (const word of words.values()) word.visible = false;
      if (!state.settings.layers.bearings) return;
      const { units } = state.settings;
      const { rotation: R, translation: p } = kit.X_RG;
      for (const { id, station, radial, axial, carries } of reading.bearingsAt(state.pitchDeg)) {
        const word = wordOf(id);
        const force = show(displayForce(carries === 'thrust' ? axial : radial, units));
        word.visible = true;
        word.text = t(carries === 'thrust' ? 'stage.bearingThrust' : 'stage.bearingRadial', {
          force,
        });
        word.put([
          (p[0] + R[0] * station) * MM,
          (p[1] + R[3] * station) * MM,
          (p[2] + R[6] * station) * MM,
        ]);
      }
    },
    paint() {},
    dispose() {
      for (const word of words.values()) kit.labels.remove(word);
    },
  };
}

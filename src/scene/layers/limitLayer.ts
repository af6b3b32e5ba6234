import { t } from '../../messages';
import { closedEdges } from '../../state/closedSpans';
import { showDegrees } from '../../state/quantities';
import { MM } from '../drawing/place';
import { Segments } from '../drawing/segments';
import { boltStation } from '../maths/station';
import type { StageKit } from '../stageKit';
import type { StageLayer } from './stageLayer';

/** What ends the pitch, on the rim of the fan: a tick at its angle and its name. Shown with the fan. */
export function createLimitLayer(kit: StageKit): StageLayer {
  const ticks = new Segments(kit.lines, 2.5);
  kit.axisFrame.add(ticks.object);
  const words = [0, 1].map(() => kit.labels.add('stage-label stage-label-warning', 3));

  return {
    update({ reading, state }, changes) {
      const visible = state.settings.layers.fan;
      ticks.object.visible = visible;
      for (const word of words) word.visible = false;
      const spans = visible ? closedEdges(reading.linkage) : [];
      if (visible && (changes.design || changes.settings)) {
        const { base, reach } = kit.fanSize();
        const x = boltStation(reading) * MM;
        const strokes: number[] = [];
        for (const { edgeDeg } of spans) {
          const angle = (edgeDeg * Math.PI) / 180;
          for (const radius of [base, base + 1.1 * reach]) {
            strokes.push(x, radius * Math.cos(angle), radius * Math.sin(angle));
          }
        }
        ticks.set(strokes);
      }
      const { base, reach } = kit.fanSize();
      const { precone, torqueOffset } = reading.rotor;
      const [c, s] = [Math.cos(precone), Math.sin(precone)];
      spans.slice(0, words.length).forEach(({ edgeDeg, why }, i) => {
        const angle = (edgeDeg * Math.PI) / 180;
        const radius = base + 1.25 * reach;
        const station = boltStation(reading) * MM;
        const [y, z] = [radius * Math.cos(angle), radius * Math.sin(angle)];
        const word = words[i];
        word.visible = true;
        word.text = t(`stage.limit.${why}`, { angle: showDegrees(edgeDeg) });
        word.put([station * c - z * s, y + torqueOffset * MM, station * s + z * c]);
      });
    },
    paint(palette) {
      ticks.paint(palette.warning);
    },
    dispose() {
      ticks.object.removeFromParent();
      ticks.dispose();
      for (const word of words) kit.labels.remove(word);
    },
  };
}

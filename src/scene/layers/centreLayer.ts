import { centralSecondMoment, centreOfMass } from '../../engine/mass/inertia';
import { M } from '../../engine/mass/moments';
import { eigenSymmetric } from '../../engine/math/eigenSymmetric';
import { transformPoint } from '../../engine/math/pose';
import { scale, type Vec3 } from '../../engine/math/vector';
import { t } from '../../messages';
import { MM } from '../drawing/place';
import { Segments } from '../drawing/segments';
import { axisPattern, dashPattern, dashPolyline, type Pattern, SOLID } from '../maths/dashes';
import type { StageKit } from '../stageKit';
import type { StageLayer } from './stageLayer';

/** The head's centre of mass: the quartered circle of engineering drawings. */
export function createCentreLayer(kit: StageKit): StageLayer {
  const mark = kit.labels.add('stage-centre', 0);
  const label = kit.labels.add('stage-label', 3);
  label.text = t('stage.centre');
  label.offset = [0, 18];

  return {
    update({ reading, state }) {
      const centre = centreOfMass(reading.totals);
      mark.visible = state.settings.layers.centre && centre !== null;
      label.visible = mark.visible;
      if (!centre) return;
      const at = scale(transformPoint(kit.X_RG, centre), MM);
      mark.put(at);
      label.put(at);
    },
    paint() {},
    dispose() {
      kit.labels.remove(mark);
      kit.labels.remove(label);
    },
  };
}

/** Line style of each principal axis, by ascending moment of inertia. */
const STYLES: readonly ((unit: number) => Pattern)[] = [() => SOLID, dashPattern, axisPattern];
const NAMES = [
  'stage.principal.least',
  'stage.principal.middle',
  'stage.principal.greatest',
] as const;

/**
 * Principal axes through the centre of mass. Each reaches as far as the mass is spread along it (its root-mean-square
 * distance, times two), so the longest is the axis of least inertia.
 */
export function createPrincipalLayer(kit: StageKit): StageLayer {
  const lines = new Segments(kit.lines, 1.75, { overlay: true });
  kit.gripFrame.add(lines.object);
  const labels = NAMES.map((key) => {
    const label = kit.labels.add('stage-label stage-label-quiet', 2);
    label.text = t(key);
    return label;
  });

  return {
    update({ reading, state }) {
      const centre = centreOfMass(reading.totals);
      const J = centralSecondMoment(reading.totals);
      const visible = state.settings.layers.axes && centre !== null && J !== null;
      lines.object.visible = visible;
      for (const label of labels) label.visible = visible;
      if (!visible || !centre || !J) return;
      const { values, vectors } = eigenSymmetric(J);
      const strokes: number[] = [];
      for (let k = 0; k < 3; k++) {
        // Largest spread first: least moment of inertia first.
        const at = 2 - k;
        const reach = 2 * Math.sqrt(Math.max(0, values[at]) / reading.totals[M]);
        const axis: Vec3 = [vectors[at], vectors[3 + at], vectors[6 + at]];
        const ends = [-1, 1].map(
          (way): Vec3 => [
            centre[0] + way * reach * axis[0],
            centre[1] + way * reach * axis[1],
            centre[2] + way * reach * axis[2],
          ],
        );
        dashPolyline(strokes, [scale(ends[0], MM), scale(ends[1], MM)], STYLES[k](1.4));
        labels[k].put(scale(transformPoint(kit.X_RG, ends[1]), MM));
      }
      lines.set(strokes);
    },
    paint(palette) {
      lines.paint(palette.ink);
    },
    dispose() {
      lines.object.removeFromParent();
      lines.dispose();
      for (const label of labels) kit.labels.remove(label);
    },
  };
}

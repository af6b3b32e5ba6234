import { axisDirection } from '../../engine/feathering/lumps';
import { t } from '../../messages';
import { MM } from '../drawing/place';
import { Segments } from '../drawing/segments';
import { axisPattern, dashPolyline } from '../maths/dashes';
import type { StageKit } from '../stageKit';
import type { StageLayer } from './stageLayer';

/** Shaft axis and feathering axis as dash-dot lines. Always shown: without them nothing else can be read. */
export function createFrameLayer(kit: StageKit): StageLayer {
  const lines = new Segments(kit.lines, 1.25);
  kit.root.add(lines.object);
  const feathering = kit.labels.add('stage-label stage-label-quiet', 2);
  const shaft = kit.labels.add('stage-label stage-label-quiet', 2);
  feathering.text = t('stage.axis.feathering');
  shaft.text = t('stage.axis.shaft');
  let drawn = '';

  function draw(): void {
    const { outboard, clearance } = kit.extent;
    const u = axisDirection(kit.X_RG);
    const p = kit.X_RG.translation;
    const on = (x: number) =>
      [p[0] * MM + u[0] * x, p[1] * MM + u[1] * x, p[2] * MM + u[2] * x] as const;
    const pattern = axisPattern(outboard / 60);
    const strokes: number[] = [];
    dashPolyline(strokes, [on(-0.06 * outboard), on(1.08 * outboard)], pattern);
    dashPolyline(
      strokes,
      [
        [0, 0, -clearance],
        [0, 0, 1.2 * clearance],
      ],
      pattern,
    );
    lines.set(strokes);
    feathering.put(on(1.08 * outboard));
    feathering.offset = [0, -10];
    shaft.put([0, 0, 1.2 * clearance]);
    shaft.offset = [0, -10];
  }

  return {
    update({ reading }) {
      const { torqueOffset, precone } = reading.rotor;
      const { outboard, clearance } = kit.extent;
      const next = [outboard, clearance, torqueOffset, precone].join();
      if (next === drawn) return;
      drawn = next;
      draw();
    },
    paint(palette) {
      lines.paint(palette.inkQuiet);
    },
    dispose() {
      lines.object.removeFromParent();
      lines.dispose();
      kit.labels.remove(feathering);
      kit.labels.remove(shaft);
    },
  };
}

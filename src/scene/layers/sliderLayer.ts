import type { Vec3 } from '../../engine/math/vector';
import { t } from '../../messages';
import type { LinkageReading } from '../../state/reading';
import { MM } from '../drawing/place';
import { Segments } from '../drawing/segments';
import type { StageKit } from '../stageKit';
import type { StageLayer } from './stageLayer';

/** Lines of a ring. */
const RING = 24;
/** Of the collar on the shaft and of the ball, as shares of the ball's reach. */
const COLLAR = 0.25;
const BALL = 0.12;

/**
 * A sketch of the slider: a collar on the shaft, an arm out to its ball, and the ball, which the rod runs to. It is no part
 * and has no mass. Where the rod does not reach, words say so at the arm's ball.
 */
export function createSliderLayer(kit: StageKit): StageLayer {
  const lines = new Segments(kit.lines, 1.75, { opacity: 0.8 });
  kit.root.add(lines.object);
  const word = kit.labels.add('stage-label stage-label-quiet', 3);
  const lost = kit.labels.add('stage-label stage-label-warning', 6);
  word.text = t('stage.slider');
  lost.text = t('stage.noReach');
  let drawn = '';

  return {
    update({ reading, state }, changes) {
      if (!(changes.design || changes.pitch || changes.settings)) return;
      const { linkage } = reading;
      const ball = linkage?.sliderBallAt(state.pitchDeg) ?? null;
      const shown = linkage !== null && linkage.rodPart !== null && linkage.reach > 0;
      lines.object.visible = shown && ball !== null;
      word.visible = shown && ball !== null;
      lost.visible = shown && ball === null;
      kit.sliderBall = shown && ball ? scaled(ball) : null;
      if (!shown) return;
      if (ball) draw(linkage, scaled(ball));
      else lost.put(worldBall(linkage));
    },
    paint(palette) {
      lines.paint(palette.inkQuiet);
    },
    dispose() {
      kit.sliderBall = null;
      lines.object.removeFromParent();
      lines.dispose();
      kit.labels.remove(word);
      kit.labels.remove(lost);
    },
  };

  function draw(linkage: LinkageReading, ball: Vec3): void {
    const reach = linkage.reach * MM;
    const [x, y, z] = ball;
    const next = `${reach} ${x} ${y} ${z}`;
    if (next === drawn) return;
    drawn = next;
    const strokes: number[] = [];
    const collar = COLLAR * reach;
    const out = Math.hypot(x, y) || 1;
    ring(strokes, [0, 0, z], collar);
    ring(strokes, [0, 0, z - collar / 2], collar);
    line(strokes, [(collar * x) / out, (collar * y) / out, z], ball);
    ring(strokes, ball, BALL * reach);
    ring(strokes, ball, BALL * reach, true);
    lines.set(strokes);
    word.put([0, 0, z - collar / 2]);
    word.offset = [0, 12];
  }

  function worldBall({ ball_G }: LinkageReading): Vec3 {
    const { rotation: R, translation: p } = kit.X_RG;
    const [x, y, z] = ball_G;
    return scaled([
      p[0] + R[0] * x + R[1] * y + R[2] * z,
      p[1] + R[3] * x + R[4] * y + R[5] * z,
      p[2] + R[6] * x + R[7] * y + R[8] * z,
    ]);
  }
}

function scaled([x, y, z]: Vec3): Vec3 {
  return [x * MM, y * MM, z * MM];
}

function line(out: number[], a: Vec3, b: Vec3): void {
  out.push(a[0], a[1], a[2], b[0], b[1], b[2]);
}

/** A circle across the shaft, or upright across X. */
function ring(out: number[], [x, y, z]: Vec3, radius: number, upright = false): void {
  const point = (i: number): Vec3 => {
    const angle = (2 * Math.PI * i) / RING;
    const [c, s] = [radius * Math.cos(angle), radius * Math.sin(angle)];
    return upright ? [x, y + c, z + s] : [x + c, y + s, z];
  };
  for (let i = 0; i < RING; i++) line(out, point(i), point(i + 1));
}

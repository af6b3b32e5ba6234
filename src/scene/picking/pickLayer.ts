import { circleThrough } from '../../engine/math/circleThrough';
import { compose, transformPoint } from '../../engine/math/pose';
import { add, cross, length, scale, type Vec3 } from '../../engine/math/vector';
import { RIM_POINTS } from '../../state/picking';
import type { StageLabel } from '../drawing/labels';
import { MM } from '../drawing/place';
import { Segments } from '../drawing/segments';
import type { StageLayer } from '../layers/stageLayer';
import type { StageKit } from '../stageKit';

const CHORDS = 48;
const RIMS = ['bore', 'bolt'] as const;

/** The points picked on a part, and the circle and axis of every rim that is whole. */
export function createPickLayer(kit: StageKit): StageLayer {
  const lines = new Segments(kit.lines, 2.5, { overlay: true });
  kit.root.add(lines.object);
  kit.aids.add(lines.object);
  const marks: StageLabel[] = RIMS.flatMap((rim) =>
    Array.from({ length: RIM_POINTS }, () => kit.labels.add(`stage-pick stage-pick-${rim}`, 0)),
  );

  return {
    update({ reading, state }) {
      const { picking } = state;
      const placed = picking && reading.part(picking.part);
      lines.object.visible = Boolean(placed);
      for (const mark of marks) mark.visible = false;
      if (!picking || !placed) return;
      const X_RP = compose(kit.X_RG, placed.pose_G);
      const world = (p_P: Vec3) => scale(transformPoint(X_RP, p_P), MM);
      const strokes: number[] = [];
      for (const [row, rim] of RIMS.entries()) {
        const points = picking[rim];
        points.forEach((point, i) => {
          const mark = marks[row * RIM_POINTS + i];
          mark.put(world(point));
          mark.visible = true;
        });
        const [a, b, c] = points;
        const circle = c && circleThrough(a, b, c);
        if (circle) drawCircle(strokes, circle, world);
      }
      lines.set(strokes);
    },
    paint(palette) {
      lines.paint(palette.accent);
    },
    dispose() {
      kit.aids.delete(lines.object);
      lines.object.removeFromParent();
      lines.dispose();
      for (const mark of marks) kit.labels.remove(mark);
    },
  };
}

function drawCircle(
  strokes: number[],
  circle: NonNullable<ReturnType<typeof circleThrough>>,
  world: (p: Vec3) => Vec3,
): void {
  const { centre, normal, radius } = circle;
  const rough: Vec3 = Math.abs(normal[0]) < 0.7 ? [1, 0, 0] : [0, 1, 0];
  const across = cross(normal, rough);
  const u = scale(across, radius / length(across));
  const v = cross(normal, u);
  const at = (k: number) => {
    const angle = (2 * Math.PI * k) / CHORDS;
    return world(add(centre, add(scale(u, Math.cos(angle)), scale(v, Math.sin(angle)))));
  };
  for (let k = 0; k < CHORDS; k++) strokes.push(...at(k), ...at(k + 1));
  const reach = scale(normal, 4 * radius);
  strokes.push(...world(add(centre, reach)), ...world(add(centre, scale(reach, -1))));
}

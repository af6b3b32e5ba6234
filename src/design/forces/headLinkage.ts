import type { Linkage, RodMass } from '../../engine/linkage/linkage';
import { JXX, JYY, JZZ, M, SZ } from '../../engine/mass/moments';
import { transformPoint } from '../../engine/math/pose';
import type { Vec3 } from '../../engine/math/vector';
import { metresFromMm } from '../../engine/units';
import type { RodFacts } from '../../parts/facts';
import { partType } from '../../parts/registry';
import type { Control } from '../design';
import type { HeadModel } from '../headModel';
import type { PlacedPart } from '../headNode';

/** The push rod from the arm in use to the slider; null without an arm. */
export interface HeadLinkage {
  readonly linkage: Linkage;
  readonly arm: PlacedPart;
  /** What hangs on the arm's ball; null: the rod is taken as weightless and parallel to the shaft. */
  readonly rod: PlacedPart | null;
}

/**
 * The linkage as drawn: the ball of the arm in use, length and side of the rod on it, and the slider's ball, which
 * stands straight under (or over) the arm's ball at flat pitch where the design does not place it. Without a rod part
 * the rod is parallel to the shaft. The rod's mass is left out where it is hidden or not counted.
 */
export function headLinkage(model: HeadModel): HeadLinkage | null {
  const found = model.arm;
  if (!found) return null;
  const { arm, rod } = found;
  const ball_G = armBall(arm);
  const facts = rod && (partType(rod.part.kind).rod?.(rod.values) ?? null);
  const { control = {}, counted = {} } = model.sections;
  const weighs = rod && facts && !rod.part.hidden && counted.rodMass !== false;
  const linkage: Linkage = {
    ball_G,
    side: facts?.side ?? -1,
    length: facts?.length ?? null,
    ...sliderPlace(ball_G, control, model),
    rod: weighs ? rodMass(rod, facts) : null,
  };
  return { linkage, arm, rod };
}

/** Centre of an arm's ball, grip frame, m. */
function armBall(arm: PlacedPart): Vec3 {
  const ball = arm.sockets.find((socket) => socket.mates === 'ball');
  if (!ball) throw new Error(`armBall(): part has no ball: ${arm.part.id}`);
  return transformPoint(arm.pose, ball.pose.translation);
}

/** Rotor-frame X and Y of the slider's ball, m. */
function sliderPlace(ball_G: Vec3, control: Control, { rotor }: HeadModel) {
  const [x, y, z] = ball_G;
  const under = {
    x: x * Math.cos(rotor.precone) - z * Math.sin(rotor.precone),
    y: rotor.torqueOffset + y,
  };
  const { sliderXMm, sliderYMm } = control;
  return {
    sliderX: sliderXMm === undefined ? under.x : metresFromMm(sliderXMm),
    sliderY: sliderYMm === undefined ? under.y : metresFromMm(sliderYMm),
  };
}

/** Mass of a rod along itself. Its part frame has its origin on the arm's ball and runs along z toward the slider. */
function rodMass({ moments_P }: PlacedPart, { side }: RodFacts): RodMass {
  return {
    mass: moments_P[M],
    first: side * moments_P[SZ],
    second: moments_P[JZZ],
    transverse: (moments_P[JXX] + moments_P[JYY]) / 2,
  };
}

import type { LumpPull } from '../../engine/feathering/lumps';
import type { RotorConditions } from '../../engine/feathering/rotor';
import { dot, subtract, type Vec3 } from '../../engine/math/vector';
import { pullTally } from '../../state/pullTally';
import type { Session } from '../../state/session';
import type { DialLayout } from '../../ui/drawn/dialLayout';
import { ElementPool, setValues, svgElement } from '../marks/svg';

/**
 * The pulls that the room Pulls adds one by one, seen along the feathering axis: at every lump the pull as far as it goes
 * across the axis (pale; what goes along the axis turns nothing), the share of it that turns (bold), and the lever (thin).
 */
export interface DialPulls {
  /** `perMetre`: pixels a metre, as the parts are drawn. */
  draw(layout: DialLayout, perMetre: number): void;
}

/** Longest arrow at the design's speed, as a share of the ring's radius. */
const LONGEST = 0.45;
/** Arrows shorter than this are a dot, px. */
const LEAST = 1.5;

export function createDialPulls(group: SVGGElement, session: Session): DialPulls {
  const levers = new ElementPool(() => svgElement('line', group, { class: 'dial-pull-lever' }));
  const wholes = new ElementPool(() => svgElement('path', group, { class: 'dial-pull-whole' }));
  const turnings = new ElementPool(() => svgElement('path', group, { class: 'dial-pull-turning' }));
  const lumps = new ElementPool(() => svgElement('circle', group, { class: 'dial-pull-lump' }));

  function draw(layout: DialLayout, perMetre: number): void {
    const { shown } = session.pullsShow;
    const { reading } = session.live;
    const { pitchDeg } = session.store.getState();
    group.ownerSVGElement?.classList.toggle('dial-with-pulls', shown.open);
    const drawn = shown.open ? standing() : [];
    const [whole, share] = [wholes.take(drawn.length), turnings.take(drawn.length)];
    const [lever, lump] = [levers.take(drawn.length), lumps.take(drawn.length)];
    const across = acrossAxis(reading.rotor);
    const perNewton = shown.open ? (LONGEST * layout.radius) / longest() : 0;
    drawn.forEach(({ pull, grown, newest }, i) => {
      const [y, z] = across(subtract(pull.at, pull.foot));
      const x0 = layout.centreX + y * perMetre;
      const y0 = layout.centreY - z * perMetre;
      setValues(lever[i], { x1: layout.centreX, y1: layout.centreY, x2: x0, y2: y0 });
      const arrow = (force: Vec3, head: number) => {
        const [fy, fz] = across(force);
        const factor = grown * perNewton;
        return arrowPath(x0, y0, fy * factor, -fz * factor, head);
      };
      setValues(whole[i], { d: arrow(pull.force, 7) });
      setValues(share[i], { d: arrow(pull.turning, 9) });
      setValues(lump[i], {
        cx: x0,
        cy: y0,
        r: 3,
        class: `dial-pull-lump${newest ? ' dial-pull-newest' : ''}`,
      });
    });

    /** The lumps that stand, the newest of them perhaps half grown. */
    function standing() {
      const { entries } = pullTally(reading, pitchDeg, shown.grain, shown.speedRpm);
      return entries.flatMap(({ pulls }, i) => {
        const grown = Math.min(1, shown.progress - i);
        const newest = i === Math.ceil(shown.progress) - 1;
        return grown > 0 ? pulls.map((pull) => ({ pull, grown, newest })) : [];
      });
    }

    /** A force that no lump's pull across the axis exceeds at any pitch, at the design's speed, N. */
    function longest(): number {
      const { entries } = pullTally(reading, pitchDeg, shown.grain, null);
      let most = 0;
      for (const { pulls } of entries) {
        for (const pull of pulls) most = Math.max(most, bound(pull, reading.rotor));
      }
      return most > 0 ? most : 1;
    }
  }

  return { draw };
}

function bound({ lump, lever, force }: LumpPull, rotor: RotorConditions): number {
  const factor = lump.mass * rotor.angularSpeed ** 2;
  const beside = factor * (lever + Math.abs(rotor.torqueOffset));
  return beside + Math.abs(Math.sin(rotor.precone) * force[0]);
}

/** The two components of a vector across the feathering axis: to the right and up on the dial. */
function acrossAxis({ precone }: RotorConditions): (v: Vec3) => readonly [number, number] {
  const up: Vec3 = [-Math.sin(precone), 0, Math.cos(precone)];
  return (v) => [v[1], dot(v, up)];
}

/** A line with a head that shrinks with it; nothing where it is too short to see. */
function arrowPath(x: number, y: number, dx: number, dy: number, head: number): string {
  const size = Math.hypot(dx, dy);
  if (!(size > LEAST)) return 'M0 0';
  const [ux, uy] = [dx / size, dy / size];
  const back = Math.min(head, 0.6 * size);
  const side = 0.45 * back;
  const point = (along: number, aside: number) =>
    `${(x + ux * along - uy * aside).toFixed(2)} ${(y + uy * along + ux * aside).toFixed(2)}`;
  const tip = point(size, 0);
  return `M${point(0, 0)}L${tip}M${point(size - back, side)}L${tip}L${point(size - back, -side)}`;
}

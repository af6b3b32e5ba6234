import type { RotorConditions } from '../../engine/feathering/rotor';
import {
  cheekPressure,
  overhangStress,
  type PlaneSection,
  pinMoment,
  pinResistance,
  rootPressure,
  shearResistance,
} from '../../engine/loads/bolt';
import { pullOn } from '../../engine/loads/pull';
import { accumulate, createMoments, M } from '../../engine/mass/moments';
import { inverse, transformPoint } from '../../engine/math/pose';
import type { Radians } from '../../engine/units';
import type { BladeRootFacts, FastenerFacts } from '../../parts/facts';
import { partType } from '../../parts/registry';
import { shortIn } from '../engagement';
import type { HeadModel } from '../headModel';
import type { PlacedPart } from '../headNode';
import { BLADE_BOLT_SECTION } from '../sections/bladeBolt';
import { sectionValues } from '../sections/section';
import type { HeadForces } from './headForces';
import { hingedGroup } from './hinged';
import type { BoltCheckName, BoltLoads, Margin } from './loadTypes';
import { materialStrength } from './materialStrength';
import { type SeatedBolt, seatedBolts } from './seatedBolts';

/**
 * What each bolt through the fork carries at a pitch. Several bolts share the blade's pull evenly. The bolt is a pin in
 * double shear between the cheeks (EN 1993-1-8); its class gives the limits, and without one nothing is judged.
 */
export function boltLoads(
  forces: HeadForces,
  pitch: Radians,
  rotor: RotorConditions,
): readonly BoltLoads[] {
  const { model } = forces;
  const seated = seatedBolts(model);
  const group = hingedGroup(model);
  const blade = createMoments();
  for (const { part, moments_G } of group) if (!part.hidden) accumulate(blade, moments_G);
  const pull = pullOn(blade, rotor, pitch) / Math.max(1, seated.length);
  const [root] = group;
  const facts = root && partType(root.part.kind).bladeRoot?.(root.values);
  const seat = facts && facts.thickness > 0 ? { root, facts } : null;
  return seated.map((bolt) => loadsOf(bolt, model, rotor, pull, seat));
}

/** What the bolt holds between the cheeks. */
interface RootSeat {
  readonly root: PlacedPart;
  readonly facts: BladeRootFacts;
}

function loadsOf(
  bolt: SeatedBolt,
  model: HeadModel,
  rotor: RotorConditions,
  pull: number,
  seat: RootSeat | null,
): BoltLoads {
  const { facts, fork, under, strength, placed } = bolt;
  const sections = {
    shankDiameter: facts.nominalDiameter,
    stressArea: facts.stressArea,
    rootDiameter: facts.rootDiameter,
  };
  const upper = under + fork.cheekThickness;
  const planes = [sectionAt(facts, upper), sectionAt(facts, upper + fork.slotHeight)] as const;
  const shear = planes.map((plane): Margin => {
    if (!strength) return { kind: 'unknown', value: pull / 2, why: 'noClass' };
    const { force, outside } = shearResistance(sections, plane, strength);
    return known(pull / 2, force, `EN 1993-1-8, ${strength.name}`, outside);
  });
  const worstShear = shear.reduce((a, b) => (useOf(b) > useOf(a) ? b : a));
  const rootThickness = seat?.facts.thickness ?? 0;
  const gap = Math.max(0, (fork.slotHeight - rootThickness) / 2);
  const bending = pinMoment(pull, { cheek: fork.cheekThickness, root: rootThickness, gap });
  const inThread = planes.includes('thread');
  const diameter = inThread ? facts.rootDiameter : facts.nominalDiameter;
  const bent: Margin = strength
    ? known(
        bending,
        pinResistance(diameter, strength),
        `EN 1993-1-8, ${strength.name}`,
        !strength.inShearTable,
      )
    : { kind: 'unknown', value: bending, why: 'noClass' };
  const checks: { name: BoltCheckName; margin: Margin }[] = [
    { name: 'shear', margin: worstShear },
    { name: 'bending', margin: bent },
    { name: 'shearAndBending', margin: together(worstShear, bent) },
    { name: 'cheekPressure', margin: pressureOn(bolt, model, pull) },
    ...(seat
      ? [{ name: 'rootPressure' as const, margin: pressureOnRoot(seat, facts, model, pull) }]
      : []),
    { name: 'headPull', margin: overhang(bolt, model, rotor) },
  ];
  const { clampForceN } = sectionValues(BLADE_BOLT_SECTION, model.sections.bladeBolt);
  if (clampForceN > 0) checks.push({ name: 'thread', margin: clampOn(bolt, clampForceN) });
  return { id: placed.part.id, pull, planes, checks, retention: retentionOf(placed, model) };
}

function known(value: number, limit: number, source: string, outside: boolean): Margin {
  return { kind: 'known', value, limit, use: value / limit, source, outside };
}

function useOf(margin: Margin): number {
  return margin.kind === 'known' ? margin.use : 0;
}

/** What stands at a distance from the head's underside. */
function sectionAt({ threadFrom }: FastenerFacts, at: number): PlaneSection {
  return at < threadFrom ? 'shank' : 'thread';
}

/** Shear and bending in one pin: (V / V_R)^2 + (M / M_R)^2 <= 1, told as the root, which goes with the load. */
function together(shear: Margin, bending: Margin): Margin {
  // There is no such value without the limits.
  if (shear.kind === 'unknown') return { ...shear, value: Number.NaN };
  if (bending.kind === 'unknown') return { ...bending, value: Number.NaN };
  const use = Math.hypot(shear.use, bending.use);
  return { kind: 'known', value: use, limit: 1, use, source: shear.source, outside: shear.outside };
}

/** Mean pressure in the cheeks against the grip's own strength; no standard covers plastics. */
function pressureOn({ facts, fork, grip }: SeatedBolt, model: HeadModel, pull: number): Margin {
  const value = cheekPressure(pull, facts.nominalDiameter, fork.cheekThickness);
  const limit = materialStrength(grip, model);
  return limit === null
    ? { kind: 'unknown', value, why: 'noStrength' }
    : known(value, limit.pascal, limit.source, false);
}

/** The same in the blade's root, or round its bushing, against the root's own strength. */
function pressureOnRoot(
  { root, facts: { thickness, bushing } }: RootSeat,
  { nominalDiameter }: FastenerFacts,
  model: HeadModel,
  pull: number,
): Margin {
  const value = rootPressure(pull, bushing ?? nominalDiameter, thickness);
  const limit = materialStrength(root, model);
  return limit === null
    ? { kind: 'unknown', value, why: 'noRootStrength' }
    : known(value, limit.pascal, limit.source, false);
}

/** Clamp force in the thread against the proof load A_s S_p (the 0.2 % load where the class has no proof stress). */
function clampOn({ facts, strength }: SeatedBolt, force: number): Margin {
  if (!strength) return { kind: 'unknown', value: force, why: 'noClass' };
  const limit = facts.stressArea * (strength.proof ?? strength.yield);
  return known(force, limit, `${strength.standard}, ${strength.name}`, false);
}

/**
 * Bending of the shank at the cheek's face by what hangs over it, head side and nut side, the worse: the pull on it
 * times the distance of its centre. On the nut's side and where thread begins under the head the root of the thread
 * resists.
 */
function overhang(bolt: SeatedBolt, model: HeadModel, rotor: RotorConditions): Margin {
  const { facts, fork, under, strength, placed } = bolt;
  const reach = fork.boltStation * rotor.angularSpeed ** 2;
  const grips = under + 2 * fork.cheekThickness + fork.slotHeight;
  let above = facts.headMass * (facts.headCentre + under);
  let below = 0;
  for (const { mass, height } of carriedBy(placed, model)) {
    if (height > 0) above += mass * (height + under);
    else if (height < -grips) below += mass * (-height - grips);
  }
  const shankMass = Math.max(0, placed.moments_P[M] - facts.headMass);
  const past = facts.end - grips;
  if (past > 0 && facts.end > 0) below += (shankMass * past * past) / facts.end / 2;
  const headDiameter = facts.threadFrom > under ? facts.nominalDiameter : facts.rootDiameter;
  const value = Math.max(
    overhangStress(reach * above, headDiameter),
    overhangStress(reach * below, facts.rootDiameter),
  );
  return strength
    ? known(value, strength.yield, `${strength.standard}, ${strength.name}`, false)
    : { kind: 'unknown', value, why: 'noClass' };
}

/** Visible parts that sit on the bolt, directly or on one another: mass and height of the centre over the underside. */
function carriedBy(bolt: PlacedPart, model: HeadModel) {
  const toBolt = inverse(bolt.pose);
  const ids = new Set([bolt.part.id]);
  const found: { readonly mass: number; readonly height: number }[] = [];
  for (let before = 0; before < ids.size; ) {
    before = ids.size;
    for (const { part, moments_G } of model.parts) {
      const parent = part.socket?.part;
      if (parent === undefined || ids.has(part.id) || !ids.has(parent)) continue;
      ids.add(part.id);
      const mass = moments_G[M];
      if (part.hidden || !(mass > 0)) continue;
      const centre = transformPoint(toBolt, [
        moments_G[1] / mass,
        moments_G[2] / mass,
        moments_G[3] / mass,
      ]);
      found.push({ mass, height: centre[2] });
    }
  }
  return found;
}

function retentionOf(bolt: PlacedPart, model: HeadModel): BoltLoads['retention'] {
  const on = model.parts.filter(({ part }) => part.socket?.part === bolt.part.id && !part.hidden);
  const short = on.map((placed) => shortIn(bolt, placed)?.lacks);
  if (short.includes('thread')) return 'shallow';
  if (short.includes('lock')) return 'unlocked';
  const kept = on.map(({ part, values }) => partType(part.kind).retention?.(values));
  if (kept.includes('prevailing')) return 'prevailing';
  return kept.includes('plain') ? 'plain' : 'none';
}

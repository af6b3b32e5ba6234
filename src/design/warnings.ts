import { overCentreAngles } from '../engine/linkage/parallelRod';
import type { MeasuredQuantity } from '../engine/mass/measured';
import { createMoments, M } from '../engine/mass/moments';
import { findValidity, type ValidityFinding } from '../engine/mass/validity';
import { degreesFromRadians, type Radians } from '../engine/units';
import { headEquilibria } from './curve';
import type { HeadModel } from './headModel';
import { measuredReport } from './measuredReport';
import { type Misfit, misfits } from './misfits';
import { type Materials, NO_MATERIALS } from './resolve';

/** Something that a reader of the results has to know. */
export type DesignWarning =
  | { readonly code: 'noMass' }
  | { readonly code: 'notTurning' }
  | { readonly code: 'neutral' }
  | { readonly code: 'severalArms'; readonly used: string; readonly others: readonly string[] }
  /** The arm's ball lies on the feathering axis: no rod can turn the grip. */
  | { readonly code: 'ballOnAxis'; readonly arm: string }
  | { readonly code: 'overCentre'; readonly pitchesDeg: readonly number[] }
  | { readonly code: 'hiddenParts'; readonly names: readonly string[] }
  /** A part was measured, and the model as drawn is farther off than both are uncertain. SI, as in `measuredReport`. */
  | {
      readonly code: 'measuredDisagrees';
      readonly part: string;
      readonly what: MeasuredQuantity;
      readonly modelled: number;
      readonly measured: number;
      readonly expected: number;
    }
  | ({ readonly code: 'misfit' } & Misfit)
  | ({ readonly code: 'implausible'; readonly part: string | null } & {
      readonly finding: ValidityFinding;
    });

/**
 * Everything worth a warning about a head and its results in [from, to]. `materials` are the design's own, for the
 * ranges of their densities.
 */
export function findWarnings(
  model: HeadModel,
  from: Radians,
  to: Radians,
  materials: Materials = NO_MATERIALS,
): readonly DesignWarning[] {
  const totals = model.totals(createMoments());
  const warnings: DesignWarning[] = [];
  if (totals[M] === 0) warnings.push({ code: 'noMass' });
  else if (model.rotor.angularSpeed === 0) warnings.push({ code: 'notTurning' });
  else if (headEquilibria(model, from, to).kind === 'neutral') warnings.push({ code: 'neutral' });
  warnings.push(...armWarnings(model, from, to));
  const hidden = model.parts.filter(({ part }) => part.hidden).map(({ part }) => nameOf(part));
  if (hidden.length > 0) warnings.push({ code: 'hiddenParts', names: hidden });
  for (const misfit of misfits(model)) warnings.push({ code: 'misfit', ...misfit });
  warnings.push(...measuredWarnings(model, materials));
  if (totals[M] !== 0) {
    for (const finding of findValidity(totals)) {
      warnings.push({ code: 'implausible', part: null, finding });
    }
  }
  for (const { part, moments_G } of model.parts) {
    if (part.hidden) continue;
    for (const finding of findValidity(moments_G)) {
      const real = finding.kind !== 'massNotPositive' || finding.mass !== 0;
      if (real && !isSize(finding)) {
        warnings.push({ code: 'implausible', part: nameOf(part), finding });
      }
    }
  }
  return warnings;
}

/** Size is judged for the head as a whole; a part may well weigh less than a milligram. */
function isSize(finding: ValidityFinding): boolean {
  return finding.kind === 'implausibleMass' || finding.kind === 'implausibleReach';
}

function armWarnings(model: HeadModel, from: Radians, to: Radians): DesignWarning[] {
  const { rod } = model;
  const [used, ...others] = model.armParts;
  if (!rod || !used) return [];
  const warnings: DesignWarning[] = [];
  if (others.length > 0) {
    const names = others.map(({ part }) => nameOf(part));
    warnings.push({ code: 'severalArms', used: nameOf(used.part), others: names });
  }
  if (rod.ball_G[1] === 0 && rod.ball_G[2] === 0) {
    warnings.push({ code: 'ballOnAxis', arm: nameOf(used.part) });
  }
  const pitchesDeg = overCentreAngles(rod, from, to).map(degreesFromRadians);
  if (pitchesDeg.length > 0) warnings.push({ code: 'overCentre', pitchesDeg });
  return warnings;
}

function measuredWarnings(model: HeadModel, materials: Materials): DesignWarning[] {
  return model.parts.flatMap(({ part, values }) => {
    if (part.hidden || !part.measured) return [];
    const { quantities = [] } = measuredReport(part, values, materials) ?? {};
    return quantities.flatMap(({ comparison }): DesignWarning[] => {
      if (!comparison?.disagrees) return [];
      const { what, modelled, measured, expected } = comparison;
      return [
        { code: 'measuredDisagrees', part: nameOf(part), what, modelled, measured, expected },
      ];
    });
  });
}

function nameOf(part: { readonly id: string; readonly name: string }): string {
  return part.name === '' ? part.id : part.name;
}

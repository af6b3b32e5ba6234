import type { Part, TryOut } from '../../design/design';
import { describeFault } from '../../design/faultText';
import { OUTLOOK_SHARES } from '../../design/headOutlook';
import { shownTryOut, tryOutsOf } from '../../design/tryOuts';
import type { VariantFigures } from '../../design/variantOutlook';
import { anglesOf } from '../../design/verdict';
import type { HeadReading } from '../../state/reading';
import type { Session } from '../../state/session';
import type { FiguresColumn } from '../../state/words/headRows';

/** One try-out in the table of differences. */
export interface VariantColumn extends FiguresColumn {
  readonly entry: TryOut;
  readonly parts: readonly Part[];
}

/**
 * The columns of the table: the try-out on the stage, as the page shows it now, then those that are compared; all others
 * where none is. Empty without try-outs.
 */
export function variantColumns(session: Session): readonly VariantColumn[] {
  const { store, live, outlooks } = session;
  const { design, compared } = store.getState();
  const shown = shownTryOut(design);
  if (!shown) return [];
  const others = tryOutsOf(design).filter((one) => one !== shown);
  const ticked = others.filter((one) => compared.includes(one.id));
  const stage = columnOf(shown, design.parts, figuresOf(live.reading), null);
  return [
    stage,
    ...(ticked.length > 0 ? ticked : others).map((entry) => {
      const parts = entry.parts ?? design.parts;
      const outlook = outlooks.of(parts);
      return outlook?.ok === false
        ? columnOf(entry, parts, null, describeFault(outlook.error))
        : columnOf(entry, parts, outlook?.value ?? null, null);
    }),
  ];
}

function columnOf(
  entry: TryOut,
  parts: readonly Part[],
  figures: VariantFigures | null,
  fault: string | null,
): VariantColumn {
  const nameOf = (id: string) => parts.find((part) => part.id === id)?.name || id;
  return { entry, parts, figures, fault, nameOf };
}

/** The head on the stage in the same figures; equal to `variantOutlook` of its parts. */
export function figuresOf(reading: HeadReading): VariantFigures {
  const { usedPitchDeg, friction, linkage, equilibria, bandsDeg } = reading;
  const pitchesDeg = OUTLOOK_SHARES.map((share) => share * usedPitchDeg + 0);
  return {
    totals: reading.totals.slice(),
    pitchesDeg,
    moments: pitchesDeg.map(reading.momentAt),
    forces: linkage && pitchesDeg.map(reading.forceAt),
    verdict: reading.verdict(),
    restsDeg: anglesOf(equilibria, 'stable'),
    bandsDeg: friction.known ? bandsDeg : null,
    frictionCounted: friction.counted,
    limit: reading.limitInUse(),
  };
}

import type { Design, Part, TryOut } from '../../../design/design';
import { shownTryOut, tryOutsOf } from '../../../design/tryOuts';
import { t } from '../roomText';

/** The try-out that was chosen, and the head that it is held against. */
export interface ComparedPair {
  readonly before: TryOut;
  readonly beforeParts: readonly Part[];
  readonly after: TryOut;
  readonly afterParts: readonly Part[];
}

/**
 * The adopted try-out (else the one on the stage) against "Head as it was": the entry of that name, else the first other
 * one. Null where there are not two.
 */
export function comparedPair(design: Design): ComparedPair | null {
  const all = tryOutsOf(design);
  const after = all.find(({ adopted }) => adopted) ?? shownTryOut(design);
  if (!after) return null;
  const others = all.filter((one) => one !== after);
  const before = others.find(({ name }) => name === t('tryOuts.asItWas')) ?? others[0];
  if (!before) return null;
  return {
    before,
    beforeParts: before.parts ?? design.parts,
    after,
    afterParts: after.parts ?? design.parts,
  };
}

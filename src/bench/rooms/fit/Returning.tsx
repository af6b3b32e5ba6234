import { useMemo } from 'react';
import { signedDegrees } from '../../../state/words/pitchText';
import { type BenchAnalysis, type RungAnalysis, returningIn } from '../../analysis';
import type { ReturningForce } from '../../returningForce';
import { say } from '../../say';
import { useBench } from '../useDesk';

/** Whether force comes back past some pitch, and what it looks like. */
export function Returning(props: {
  readonly rung: RungAnalysis;
  readonly analysis: BenchAnalysis;
}) {
  const { rung, analysis } = props;
  const pitchSigmaDeg = useBench((state) => state.fit.pitchSigmaDeg);
  const found = useMemo(
    () => returningIn(rung, analysis, pitchSigmaDeg),
    [rung, analysis, pitchSigmaDeg],
  );
  return <p data-testid="bench-returns">{returningText(found)}</p>;
}

export function returningText(found: ReturningForce): string {
  if (found.kind === 'tooFew') return say('benchRoom.returns.tooFew');
  if (found.kind === 'none')
    return say('benchRoom.returns.none', { upTo: bothWays(found.upToDeg) });
  if (found.kind === 'unexplained')
    return say('benchRoom.returns.unexplained', { inner: bothWays(found.innerDeg) });
  const { low, high } = found.fromDeg;
  const ends = [low, high].flatMap((deg) => (deg === null ? [] : [signedDegrees(deg)]));
  const from =
    ends.length === 2 ? say('benchRoom.returns.and', { low: ends[0], high: ends[1] }) : ends[0];
  const way = found.restoring ? say('benchRoom.returns.restoring') : '';
  const inner = bothWays(found.innerDeg);
  return `${say('benchRoom.returns.returns', { inner, from, way })} ${say(`benchRoom.returns.${found.looks}`)}`;
}

function bothWays(deg: number): string {
  return `\u00b1${signedDegrees(deg).replace(/^[+\u2212]/, '')}`;
}

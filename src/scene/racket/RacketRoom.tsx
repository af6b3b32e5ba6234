import { useEffect, useState } from 'react';
import { radiansFromDegrees } from '../../engine/units';
import { t } from '../../messages';
import { useSession } from '../../ui/session';
import { RacketControls } from './RacketControls';
import { RacketFacts } from './RacketFacts';
import { RacketPicture } from './RacketPicture';
import { RacketPlot } from './RacketPlot';
import { racketBody } from './racketBody';
import { createRacketRun } from './racketRun';
import './racket.css';

/** Degrees beside the axis at first: a throw by hand. */
const FIRST_DEG = 1;

/** A racket thrown into the air: the free body beside the gripped blade. */
export function RacketRoom() {
  const { happenings } = useSession();
  const [body] = useState(racketBody);
  const [run] = useState(() =>
    createRacketRun(body.inertia, happenings, radiansFromDegrees(FIRST_DEG)),
  );
  useEffect(() => run.destroy, [run]);
  return (
    <section
      className="lower-room racket-room"
      aria-label={t('lower.racket')}
      data-testid="racket-room"
    >
      <RacketControls run={run} firstDeg={FIRST_DEG} />
      <div className="racket-columns">
        <RacketPicture body={body} run={run} />
        <div className="racket-middle">
          <RacketPlot run={run} />
          <ul className="racket-key">
            {(['momentum', 'spin', 'trace'] as const).map((line) => (
              <li key={line} data-line={line}>
                {t(`racket.key.${line}`)}
              </li>
            ))}
          </ul>
        </div>
        <RacketFacts body={body} run={run} />
      </div>
    </section>
  );
}

import { degreesFromRadians, rpmFromAngularSpeed } from '../../../engine/units';
import { displayEnergy, displayForce, displayMoment, fixed, show } from '../../../state/quantities';
import { signedDegrees } from '../../../state/words/pitchText';
import { useAppState } from '../../../ui/session';
import type { RungAnalysis } from '../../analysis';
import type { FittedHead } from '../../fitRung';
import { say } from '../../say';
import { splitRung } from '../../splitRung';
import { withHalf } from './fitWords';

/** Push and pull split pitch by pitch into moment and friction, as by hand; the fit does the same with all at once. */
export function SplitTable(props: { readonly rung: RungAnalysis; readonly fitted: FittedHead }) {
  const { rung, fitted } = props;
  const units = useAppState((state) => state.settings.units);
  const { rows, loops, unpaired } = splitRung(rung, fitted);
  if (rows.length === 0) return <p className="lower-quiet">{say('benchRoom.split.none')}</p>;
  // Twice the standard uncertainty: about 95 %.
  const force = (value: number, sigma: number) =>
    withHalf(displayForce(value, units), displayForce(2 * sigma, units).value);
  return (
    <details data-testid="bench-split">
      <summary>{say('benchRoom.split')}</summary>
      <table className="lower-table">
        <thead>
          <tr>
            {(['pitch', 'speed', 'moment', 'friction', 'hysteresis', 'grip'] as const).map(
              (name) => (
                <th scope="col" key={name} className="lower-number">
                  {say(`benchRoom.split.${name}`)}
                </th>
              ),
            )}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={`${row.zero} ${row.angularSpeed} ${row.pitch}`}>
              <th scope="row" className="lower-number">
                {signedDegrees(degreesFromRadians(row.pitch))}
              </th>
              <td className="lower-number">{`${fixed(rpmFromAngularSpeed(row.angularSpeed), 0)}\u00a0rpm`}</td>
              <td className="lower-number">{force(row.momentForce, row.momentSigma)}</td>
              <td className="lower-number">{force(row.friction, row.frictionSigma)}</td>
              <td className="lower-number">
                {show(displayForce(row.hysteresis, units))}
                {row.reversed ? ` ${say('benchRoom.split.reversed')}` : ''}
              </td>
              <td className="lower-number">{show(displayMoment(row.moment, units))}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <ul className="bench-words">
        {loops.map(({ angularSpeed, zero, work }) => (
          <li key={`${zero} ${angularSpeed}`}>
            {say('benchRoom.split.loop', {
              rpm: fixed(rpmFromAngularSpeed(angularSpeed), 0),
              work: show(displayEnergy(work, units)),
            })}
          </li>
        ))}
        {unpaired.length > 0 && (
          <li>{say('benchRoom.split.unpaired', { count: unpaired.length })}</li>
        )}
      </ul>
    </details>
  );
}

import { displayForce, show, significant } from '../../../state/quantities';
import { signedDegrees } from '../../../state/words/pitchText';
import { useAppState } from '../../../ui/session';
import type { PlannedRung } from '../../plan';
import { say } from '../../say';

/** What the gauge should read at each pitch, pulling and pushing. `blank` leaves room to write beside it. */
export function ExpectedTable(props: { readonly rung: PlannedRung; readonly blank?: boolean }) {
  const { rung, blank } = props;
  const units = useAppState((state) => state.settings.units);
  const { unit } = displayForce(0, units);
  const text = (force: number) =>
    Number.isNaN(force) ? say('benchRoom.plan.noReading') : show(displayForce(force, units));
  return (
    <table className="lower-table bench-narrow" data-testid={blank ? undefined : 'bench-expected'}>
      <thead>
        <tr>
          <th scope="col" className="lower-number">
            {say('benchRoom.head.pitch')}
          </th>
          <th scope="col" className="lower-number">
            {say('benchRoom.plan.pull')}
          </th>
          {blank && <th scope="col">{say('benchRoom.plan.read', { unit })}</th>}
          <th scope="col" className="lower-number">
            {say('benchRoom.plan.push')}
          </th>
          {blank && <th scope="col">{say('benchRoom.plan.read', { unit })}</th>}
          <th scope="col" className="lower-number">
            {say('benchRoom.plan.sigma')}
          </th>
          {blank && <th scope="col">{say('benchRoom.meta.note')}</th>}
        </tr>
      </thead>
      <tbody>
        {rung.expected.map(({ pitchDeg, pull, push, sigma }) => (
          <tr key={pitchDeg}>
            <th scope="row" className="lower-number">
              {signedDegrees(pitchDeg)}
            </th>
            <td className="lower-number">{text(pull)}</td>
            {blank && <td className="bench-blank" />}
            <td className="lower-number">{text(push)}</td>
            {blank && <td className="bench-blank" />}
            <td className="lower-number">
              {Number.isNaN(sigma)
                ? ''
                : `\u00b1\u00a0${significant(displayForce(sigma, units).value, 2)}\u00a0${unit}`}
            </td>
            {blank && <td className="bench-blank" />}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

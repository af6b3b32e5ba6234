import type { BenchSense } from '../../../design/sections/bench';
import { displayForce, show, significant } from '../../../state/quantities';
import { signedDegrees } from '../../../state/words/pitchText';
import { useAppState } from '../../../ui/session';
import type { ExpectedReading } from '../../plan';
import { say } from '../../say';

const BOTH: readonly BenchSense[] = ['pull', 'push'];

/**
 * What the gauge should read at each pitch, in each way that it is read. `blank` leaves room to write beside it; `onLeaveOut`
 * gives each row a button that takes its pitch out of the plan.
 */
export function ExpectedTable(props: {
  readonly rung: { readonly expected: readonly ExpectedReading[] };
  readonly senses?: readonly BenchSense[];
  readonly blank?: boolean;
  readonly onLeaveOut?: (pitchDeg: number) => void;
}) {
  const { rung, blank, senses = BOTH, onLeaveOut } = props;
  const units = useAppState((state) => state.settings.units);
  const { unit } = displayForce(0, units);
  const canLeave = onLeaveOut && rung.expected.length > 1;
  return (
    <table className="lower-table bench-narrow" data-testid={blank ? undefined : 'bench-expected'}>
      <thead>
        <tr>
          <th scope="col" className="lower-number">
            {say('benchRoom.head.pitch')}
          </th>
          {senses.map((sense) => (
            <SenseHead key={sense} sense={sense} unit={unit} blank={blank === true} />
          ))}
          <th scope="col" className="lower-number">
            {say('benchRoom.plan.sigma')}
          </th>
          {blank && <th scope="col">{say('benchRoom.meta.note')}</th>}
          {canLeave && (
            <th scope="col">
              <span className="ui-unseen">{say('benchRoom.remove')}</span>
            </th>
          )}
        </tr>
      </thead>
      <tbody>
        {rung.expected.map((expected) => (
          <tr key={expected.pitchDeg}>
            <th scope="row" className="lower-number">
              {signedDegrees(expected.pitchDeg)}
            </th>
            {senses.map((sense) => (
              <SenseCell
                key={sense}
                force={sense === 'held' ? expected.force : expected[sense]}
                blank={blank === true}
              />
            ))}
            <td className="lower-number">
              {Number.isNaN(expected.sigma) || expected.sigma === 0
                ? ''
                : `\u00b1\u00a0${significant(displayForce(expected.sigma, units).value, 2)}\u00a0${unit}`}
            </td>
            {blank && <td className="bench-blank" />}
            {canLeave && (
              <td>
                <button
                  type="button"
                  className="bench-out"
                  aria-label={say('benchRoom.plan.leaveOut', {
                    pitch: signedDegrees(expected.pitchDeg),
                  })}
                  title={say('benchRoom.plan.leaveOut', {
                    pitch: signedDegrees(expected.pitchDeg),
                  })}
                  onClick={() => onLeaveOut(expected.pitchDeg)}
                >
                  {'\u00d7'}
                </button>
              </td>
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function SenseHead(props: {
  readonly sense: BenchSense;
  readonly unit: string;
  readonly blank: boolean;
}) {
  const { sense, unit, blank } = props;
  return (
    <>
      <th scope="col" className="lower-number">
        {say(`benchRoom.plan.${sense}`)}
      </th>
      {blank && <th scope="col">{say('benchRoom.plan.read', { unit })}</th>}
    </>
  );
}

function SenseCell({ force, blank }: { readonly force: number; readonly blank: boolean }) {
  const units = useAppState((state) => state.settings.units);
  return (
    <>
      <td className="lower-number">
        {Number.isNaN(force) ? say('benchRoom.plan.noReading') : show(displayForce(force, units))}
      </td>
      {blank && <td className="bench-blank" />}
    </>
  );
}

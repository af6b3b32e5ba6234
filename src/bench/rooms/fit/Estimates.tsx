import { radiansFromDegrees } from '../../../engine/units';
import { show } from '../../../state/quantities';
import { MathText } from '../../../ui/MathText';
import { useAppState } from '../../../ui/session';
import type { RungAnalysis } from '../../analysis';
import type { FittedHead } from '../../fitRung';
import { say } from '../../say';
import { keyName, keyQuantity, withHalf } from './fitWords';

/** Fitted numbers with the half width of their 95 % interval, beside the model's. */
export function Estimates(props: { readonly rung: RungAnalysis; readonly fitted: FittedHead }) {
  const { rung, fitted } = props;
  const units = useAppState((state) => state.settings.units);
  const { friction } = rung.setup;
  const { head } = rung;
  // The law says what the number is: a moment at the design's speed, or a force that the model does not have.
  const rubbing =
    friction === 'force' ? null : head.bearingMoment(radiansFromDegrees(0), head.designSpeed);
  const modelled = { ...fitted.model, friction: rubbing };
  return (
    <table className="lower-table" data-testid="bench-estimates">
      <thead>
        <tr>
          <th scope="col">{say('benchRoom.fit.number')}</th>
          <th scope="col" className="lower-number">
            {say('benchRoom.fit.measured')}
          </th>
          <th scope="col" className="lower-number">
            {say('benchRoom.fit.modelled')}
          </th>
          <th scope="col" className="lower-number">
            {say('benchRoom.fit.difference')}
          </th>
        </tr>
      </thead>
      <tbody>
        {fitted.fit.estimates.map(({ key, value, half95, determined }) => {
          if (key.kind === 'drag' || key.kind === 'shared') return null;
          const quantity = keyQuantity(key, value, friction, units);
          const half = keyQuantity(key, half95, friction, units).value;
          const model = key.kind in modelled ? modelled[key.kind as keyof typeof modelled] : null;
          return (
            <tr key={`${key.kind} ${'index' in key ? key.index : ''}`}>
              <th scope="row">
                <MathText text={keyName(key)} />
              </th>
              <td className="lower-number" data-testid={`bench-value-${key.kind}`}>
                {determined ? withHalf(quantity, half) : say('benchRoom.fit.undetermined')}
              </td>
              <td className="lower-number">
                {model === null ? '' : show(keyQuantity(key, model, friction, units))}
              </td>
              <td className="lower-number">
                {model === null || !determined
                  ? ''
                  : withHalf(keyQuantity(key, value - model, friction, units), half)}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

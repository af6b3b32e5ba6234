import { BENCH_DELIMITERS } from '../../../design/sections/bench';
import type { DecimalSign, Delimiter } from '../../readings/types';
import { say } from '../../say';
import { useDesk } from '../useDesk';
import { SIGNS } from './previewWords';

const DECIMALS: readonly DecimalSign[] = ['.', ','];

/** How columns are parted and which decimal sign holds, where the person knows better. */
export function OptionRow(props: {
  readonly delimiter: Delimiter | undefined;
  readonly decimal: DecimalSign | undefined;
}) {
  const desk = useDesk();
  const { delimiter, decimal } = props;
  const told = { ...(delimiter && { delimiter }), ...(decimal && { decimal }) };
  return (
    <div className="bench-buttons">
      <label>
        {say('benchRoom.delimiter')}{' '}
        <select
          className="ui-select"
          value={delimiter ?? ''}
          data-testid="bench-delimiter"
          onChange={({ target }) => {
            const { delimiter: _, ...rest } = told;
            const chosen = target.value as Delimiter | '';
            desk.reread({ options: chosen === '' ? rest : { ...rest, delimiter: chosen } });
          }}
        >
          <option value="">{say('benchRoom.findOut')}</option>
          {BENCH_DELIMITERS.map((sign) => (
            <option key={sign} value={sign}>
              {say(`benchRoom.sign.${SIGNS[sign]}`)}
            </option>
          ))}
        </select>
      </label>
      <label>
        {say('benchRoom.decimal')}{' '}
        <select
          className="ui-select"
          value={decimal ?? ''}
          data-testid="bench-decimal"
          onChange={({ target }) => {
            const { decimal: _, ...rest } = told;
            const chosen = target.value as DecimalSign | '';
            desk.reread({ options: chosen === '' ? rest : { ...rest, decimal: chosen } });
          }}
        >
          <option value="">{say('benchRoom.findOut')}</option>
          {DECIMALS.map((sign) => (
            <option key={sign} value={sign}>
              {say(`benchRoom.sign.${SIGNS[sign]}`)}
            </option>
          ))}
        </select>
      </label>
    </div>
  );
}

import { COUNTED_SECTION } from '../../design/sections/counted';
import { sectionValues } from '../../design/sections/section';
import { partText, t } from '../../messages';
import { useAppState, useSession } from '../../ui/session';

const NAMES = Object.keys(COUNTED_SECTION) as (keyof typeof COUNTED_SECTION)[];

/** What is counted beside the grip's own mass. Part of the design: each press is one undo step. */
export function CountedSwitches() {
  const { actions } = useSession();
  const written = useAppState((state) => state.design.counted);
  const counted = sectionValues(COUNTED_SECTION, written);
  return (
    <fieldset className="chart-counted">
      <legend>{t('chart.counted')}</legend>
      {NAMES.map((name) => (
        <label
          className="chart-check"
          key={name}
          title={partText(`counted.${name}.help`, COUNTED_SECTION[name].help)}
        >
          <input
            type="checkbox"
            data-testid={`counted-${name}`}
            checked={counted[name]}
            onChange={(event) => actions.setSection('counted', { [name]: event.target.checked })}
          />
          {t(`chart.counted.${name}`)}
        </label>
      ))}
    </fieldset>
  );
}

import type { Tolerance } from '../../design/design';
import type { SectionNumber } from '../../design/sections/section';
import { TOLERANCE_SECTION } from '../../design/sections/tolerance';
import { partText } from '../../messages';
import { toleranceValues } from '../../neutralise/closeness/tolerances';
import { displayForce, show } from '../../state/quantities';
import { refusalText } from '../../state/refusalText';
import { grouped } from '../../state/shownUnits';
import { t } from '../../state/words/closenessText';
import { useAppState, useSession } from '../../ui/session';
import { OptionalNumberRow } from '../measured/OptionalNumberRow';

type NumberKey = 'densityPercent' | 'targetForceN' | 'samples' | 'seed' | 'balanceGrade';
type ChoiceKey = 'generalClass' | 'distribution';

/** The section `tolerance` of the design, beside what comes of it. */
export function RunFields({ folded }: { readonly folded: boolean }) {
  // Opened and closed by hand; a result folds it away once, and makes room for itself.
  return (
    <details className="closeness-settings" key={String(folded)} open={!folded}>
      <summary>
        <Summary />
      </summary>
      <div className="closeness-fields">
        <ChoiceRow name="generalClass" />
        <NumberRow name="targetForceN" />
        <ChoiceRow name="distribution" />
        <NumberRow name="samples" />
        <NumberRow name="densityPercent" />
        <NumberRow name="seed" />
        <NumberRow name="balanceGrade" />
      </div>
    </details>
  );
}

function Summary() {
  const values = toleranceValues(useAppState((state) => state.design.tolerance));
  const units = useAppState((state) => state.settings.units);
  const { generalClass, targetForceN, samples, seed } = values;
  const own = TOLERANCE_SECTION.generalClass.optionLabels[generalClass];
  return t('closely.settings', {
    class: partText(`tolerance.generalClass.${generalClass}`, own),
    target: show(displayForce(targetForceN, units)),
    samples: grouped(String(samples)),
    seed,
  });
}

function useWrite() {
  const { actions, store } = useSession();
  return (change: Parameters<typeof actions.setSection<'tolerance'>>[1]): string | null => {
    const outcome = actions.setSection('tolerance', change);
    const { design, settings } = store.getState();
    return outcome.ok ? null : refusalText(outcome.error, design, null, settings.units);
  };
}

function NumberRow({ name }: { readonly name: NumberKey }) {
  const value = useAppState((state) => state.design.tolerance?.[name]);
  const write = useWrite();
  const field: SectionNumber = TOLERANCE_SECTION[name];
  const standard = field.default === null ? {} : { standard: field.default };
  return (
    <OptionalNumberRow
      value={value}
      placeholder={t('closely.none')}
      field={{
        key: `run-${name}`,
        label: partText(`tolerance.${name}.label`, field.label),
        help: partText(`tolerance.${name}.help`, field.help),
        limits: { ...field, ...standard },
        step: field.step,
        commit: (next) => write({ [name]: next }),
      }}
    />
  );
}

function ChoiceRow({ name }: { readonly name: ChoiceKey }) {
  const field = TOLERANCE_SECTION[name];
  const value = useAppState((state) => state.design.tolerance?.[name] ?? field.default);
  const write = useWrite();
  const labels: Readonly<Record<string, string>> = field.optionLabels;
  return (
    <label className="field" title={partText(`tolerance.${name}.help`, field.help)}>
      <span className="field-label">{partText(`tolerance.${name}.label`, field.label)}</span>
      <select
        className="ui-select field-choice"
        data-testid={`run-${name}`}
        value={value}
        onChange={(event) => write({ [name]: event.target.value } as Partial<Tolerance>)}
      >
        {field.options.map((option) => (
          <option key={option} value={option}>
            {partText(`tolerance.${name}.${option}`, labels[option])}
          </option>
        ))}
      </select>
    </label>
  );
}

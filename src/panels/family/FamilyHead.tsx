import { t } from '../../messages';
import { TURNED_MATERIALS } from '../../neutralise/offers';
import { materialName } from '../../state/words/materialText';
import { knobText } from '../../state/words/planText';
import { useAppState, useRestingDesign, useSession } from '../../ui/session';
import { PlanNumber } from '../goal/PlanNumber';
import { useFamily, usePlan } from '../goal/usePlan';
import { type FamilyChoice, type FamilyWindow, usualBar } from './familyRequest';
import '../goal/goal.css';

/** What the family is of, how far the chart goes, materials, and how far the work is. */
export function FamilyHead(props: {
  readonly choices: readonly FamilyChoice[];
  readonly choice: FamilyChoice;
  readonly window: FamilyWindow;
  readonly onWindow: (window: FamilyWindow) => void;
  readonly onWorkOut: () => void;
}) {
  const { choice, choices, window, onWindow } = props;
  const { plan: desk } = useSession();
  const plan = usePlan();
  const design = useRestingDesign();
  const { diametersMm, lengthsMm } = window;
  const common = { help: t('family.rangeHelp'), unit: 'mm', max: 300, step: 1 } as const;
  return (
    <div className="lower-head family-head">
      <label className="family-choice" title={t('family.ofTitle')}>
        {t('family.of')}
        <select
          className="ui-select"
          data-testid="family-of"
          value={choice.key}
          onChange={(event) => desk.set({ trim: event.target.value })}
        >
          {choices.map(({ key, part, trim }) => (
            <option key={key} value={key}>
              {knobText(design, { part: part.id, field: trim.length })}
            </option>
          ))}
        </select>
      </label>
      <PlanNumber
        {...common}
        name="family-diameter"
        label={t('family.diameters')}
        min={diametersMm[0] + 0.5}
        value={diametersMm[1]}
        onChange={(to) => to !== null && onWindow({ ...window, diametersMm: [diametersMm[0], to] })}
      />
      <PlanNumber
        {...common}
        name="family-length"
        label={t('family.lengths')}
        min={lengthsMm[0] + 0.5}
        value={lengthsMm[1]}
        onChange={(to) => to !== null && onWindow({ ...window, lengthsMm: [lengthsMm[0], to] })}
      />
      <PlanNumber
        {...common}
        help={t('family.barHelp')}
        name="family-bar"
        label={t('family.bar')}
        min={0.5}
        value={plan.largestBarMm}
        standard={usualBar({ choice, window })}
        onChange={(largestBarMm) => desk.set({ largestBarMm })}
      />
      <MaterialTicks />
      <Progress onWorkOut={props.onWorkOut} />
    </div>
  );
}

function MaterialTicks() {
  const { plan: desk } = useSession();
  const plan = usePlan();
  const own = useAppState((state) => state.design.materials);
  const { familyMaterials: chosen } = plan;
  return (
    <details className="family-materials">
      <summary className="ui-button">{t('family.materials', { count: chosen.length })}</summary>
      <div className="family-ticks">
        {TURNED_MATERIALS.map((id) => (
          <label key={id} className="goal-tick">
            <input
              type="checkbox"
              checked={chosen.includes(id)}
              onChange={({ target }) =>
                desk.set({
                  familyMaterials: target.checked
                    ? [...chosen, id]
                    : chosen.filter((one) => one !== id),
                })
              }
            />
            {materialName(id, own ?? [])}
          </label>
        ))}
      </div>
    </details>
  );
}

function Progress({ onWorkOut }: { readonly onWorkOut: () => void }) {
  const { plan: desk } = useSession();
  const state = useFamily();
  if (state.kind === 'running') {
    return (
      <span className="family-progress" role="status">
        {t('family.running', { ...state.progress })}{' '}
        <button type="button" className="ui-button" onClick={desk.family.cancel}>
          {t('family.cancel')}
        </button>
      </span>
    );
  }
  if (state.kind !== 'cancelled' && state.kind !== 'failed') return null;
  return (
    <span className="family-progress" role="status">
      {state.kind === 'failed'
        ? t('family.failed', { reason: state.reason })
        : t('family.cancelled')}{' '}
      <button type="button" className="ui-button" onClick={onWorkOut}>
        {t('family.again')}
      </button>
    </span>
  );
}

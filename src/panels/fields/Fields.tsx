import { type SyntheticEvent, useId, useMemo, useRef } from 'react';
import { partText, t } from '../../messages';
import { isKeepOut } from '../../parts/contract';
import { partType } from '../../parts/registry';
import { useAppState, useSession } from '../../ui/session';
import { ConditionFields } from '../conditions/ConditionFields';
import { FieldGroup } from './FieldGroup';
import { PartFields } from './PartFields';
import { placementFields } from './placementFields';
import { Results } from './Results';
import { useShape } from './useShape';
import './fields.css';

/**
 * The numbers of what is selected: a part's dimensions, material and placement, or the rotor's when nothing is. What
 * the pointer or the keyboard is on explains itself in the line at the foot.
 */
export function Fields() {
  const session = useSession();
  const { store, live, actions } = session;
  const id = useAppState((state) => state.selection);
  const heading = useId();
  const helpLine = useRef<HTMLParagraphElement>(null);
  const name = useAppState(
    (state) => state.design.parts.find((part) => part.id === state.selection)?.name,
  );
  const shape = useShape();
  const kind = store.getState().design.parts.find((part) => part.id === id)?.kind;
  const groups = useMemo(() => {
    const part = id === null ? undefined : live.model.placed(id)?.part;
    if (!part) return { part: null, place: [], shape };
    return { part, place: placementFields(session, part), shape };
  }, [id, live, session, shape]);

  function explain(event: SyntheticEvent): void {
    const target = event.target as Element;
    const help = target.closest<HTMLElement>('[data-help]')?.dataset.help;
    if (helpLine.current && help !== undefined) helpLine.current.textContent = help;
  }

  return (
    <section
      className="fields"
      aria-labelledby={heading}
      data-testid="fields"
      onFocus={explain}
      onPointerOver={explain}
    >
      <header className="fields-head">
        <h2 className="fields-title" id={heading}>
          {name ?? t('fields.rotor')}
        </h2>
        {kind && (
          <span className="fields-kind">
            {partText(`part.${kind}.label`, partType(kind).label)}
          </span>
        )}
      </header>
      <div className="fields-scroll">
        {groups.part ? (
          <>
            <PartFields key={`${id} ${kind}`} part={groups.part} />
            <FieldGroup
              key={`place ${id} ${shape}`}
              title={t('fields.placement')}
              fields={groups.place}
              partId={id}
            />
            {groups.part.pose && !isKeepOut(partType(groups.part.kind)) && (
              <button
                type="button"
                className="ui-button fields-pick"
                data-testid="place-by-holes"
                onClick={() => groups.part && actions.picking.begin(groups.part.id)}
              >
                {t('fields.placeByHoles')}
              </button>
            )}
          </>
        ) : (
          <ConditionFields key="conditions" />
        )}
        {!(kind && isKeepOut(partType(kind))) && <Results key={id} partId={kind ? id : null} />}
      </div>
      <p className="fields-help" key={`help ${kind}`} ref={helpLine} aria-hidden="true">
        {kind ? partText(`part.${kind}.help`, partType(kind).help) : t('fields.rotorHelp')}
      </p>
    </section>
  );
}

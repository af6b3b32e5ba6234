import { useState } from 'react';
import type { Part } from '../../design/design';
import { faultMessage } from '../../design/faultText';
import type { Materials } from '../../design/resolve';
import { materialNamed, materialsOf } from '../../design/resolve';
import { t } from '../../messages';
import type { Material, OwnMaterial } from '../../parts/materials/material';
import { partType } from '../../parts/registry';
import { refusalText } from '../../state/refusalText';
import {
  materialFacts,
  materialName,
  materialNumber,
  rangeText,
} from '../../state/words/materialText';
import { PickList } from '../../ui/PickList';
import { useAppState, useSession } from '../../ui/session';
import { type MaterialHit, searchMaterials } from './materialSearch';
import { usersOf } from './ownMaterial';

/** The list with its search, and beside it what is known of the one that stands out. */
export function MaterialList(props: {
  readonly part: Part;
  readonly density: string;
  readonly active: string | null;
  readonly onActive: (id: string) => void;
  readonly onTaken: () => void;
  readonly onDraft: (material: OwnMaterial | null) => void;
}) {
  const { part, density } = props;
  const { store, actions } = useSession();
  const own = useAppState((state) => materialsOf(state.design));
  const [query, setQuery] = useState('');
  const [refused, setRefused] = useState<string | null>(null);
  const hits = searchMaterials(own, query);
  const hit = hits.find(({ material }) => material.id === props.active) ?? hits[0];
  const named = materialNamed(part, partType(part.kind).parameters[density]) !== undefined;

  function activate(id: string): void {
    setRefused(null);
    props.onActive(id);
  }

  function search(text: string): void {
    setQuery(text);
    const [first] = searchMaterials(own, text);
    if (first) activate(first.material.id);
  }

  function take(material: string | null): void {
    const outcome = actions.setMaterial(part.id, density, material);
    if (outcome.ok) return props.onTaken();
    const { design, settings } = store.getState();
    setRefused(refusalText(outcome.error, design, part.id, settings.units));
  }

  function remove({ id, name }: MaterialHit['material']): void {
    const outcome = actions.setOwnMaterials(own.filter((one) => one.id !== id));
    if (outcome.ok) return setRefused(null);
    const users = usersOf(store.getState().design.parts, id).map((one) => one.name);
    setRefused(
      users.length > 0
        ? t('materials.inUse', { name, parts: users.join(', ') })
        : t('materials.refused', { field: name, reason: faultMessage(outcome.error.reason) }),
    );
  }

  return (
    <form
      className="pick-panes"
      onSubmit={(event) => {
        event.preventDefault();
        if (hit) take(hit.material.id);
      }}
    >
      <PickList
        label={t('materials.search')}
        placeholder={t('materials.searchExample')}
        listLabel={t('materials.list')}
        count={t(hits.length > 0 ? 'materials.found' : 'materials.none', { count: hits.length })}
        query={query}
        onQuery={search}
        items={hits}
        keyOf={({ material }) => material.id}
        groupOf={({ group }) => group}
        active={hit?.material.id ?? null}
        onActive={activate}
        onTake={() => hit && take(hit.material.id)}
      >
        {({ material }) => <Item material={material} own={own} />}
      </PickList>
      <div className="pick-detail">
        {hit && (
          <>
            <Detail material={hit.material} own={own} />
            {refused !== null && (
              <p className="pick-fault" role="alert">
                {refused}
              </p>
            )}
            <div className="pick-actions">
              <button type="submit" className="ui-button pick-take" data-testid="material-take">
                {t('materials.take', { name: materialName(hit.material.id, own) })}
              </button>
              {hit.own && (
                <>
                  <button
                    type="button"
                    className="ui-button"
                    data-testid="material-edit"
                    onClick={() => props.onDraft(hit.material)}
                  >
                    {t('materials.edit')}
                  </button>
                  <button
                    type="button"
                    className="ui-button"
                    data-testid="material-remove"
                    onClick={() => remove(hit.material)}
                  >
                    {t('materials.remove')}
                  </button>
                </>
              )}
            </div>
          </>
        )}
        <div className="pick-actions materials-others">
          <button
            type="button"
            className="ui-button"
            data-testid="material-new"
            onClick={() => props.onDraft(null)}
          >
            {t('materials.new')}
          </button>
          {named && (
            <button
              type="button"
              className="ui-button"
              data-testid="material-none"
              onClick={() => take(null)}
            >
              {t('materials.keepNumber')}
            </button>
          )}
        </div>
      </div>
    </form>
  );
}

interface Shown {
  readonly material: Material | OwnMaterial;
  readonly own: Materials;
}

function Item({ material, own }: Shown) {
  return (
    <>
      <span>{materialName(material.id, own)}</span>
      <span className="pick-aside">
        {isRecalled(material) && (
          <>
            <span className="pick-memory">{t('materials.fromMemory')}</span>{' '}
          </>
        )}
        {materialNumber(material.densityKgM3, 'kg/m3')}
        {rangeText(material) && ` (${rangeText(material)})`}
      </span>
    </>
  );
}

function Detail({ material, own }: Shown) {
  return (
    <>
      <h3>{materialName(material.id, own)}</h3>
      <dl className="pick-facts">
        {materialFacts(material).map(([key, text]) => (
          <Fact key={key} label={t(key)} text={text} />
        ))}
      </dl>
      {isRecalled(material) && <p className="pick-note">{t('materials.fromMemoryNote')}</p>}
    </>
  );
}

function Fact(props: { readonly label: string; readonly text: string }) {
  return (
    <>
      <dt>{props.label}</dt>
      <dd className={props.text.length > 32 ? 'pick-prose' : undefined}>{props.text}</dd>
    </>
  );
}

function isRecalled(material: Material | OwnMaterial): boolean {
  return 'fromMemory' in material && material.fromMemory;
}

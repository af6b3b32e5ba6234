import { useEffect, useId, useState } from 'react';
import { t } from '../../messages';
import { HelpName } from '../../ui/help/HelpName';
import { MathText } from '../../ui/MathText';
import { useSession } from '../../ui/session';
import { useOpenPartDialog } from '../shelf/PartDialogs';
import { AddPart } from './AddPart';
import { RailList } from './RailList';
import { RailTools } from './RailTools';
import { useRailItems } from './useRailItems';
import { watchStations } from './watchStations';
import './rail.css';

export type RailOrder = 'station' | 'list';

/**
 * Who pulls which way: every part with its mass and its share of J_yy - J_zz, from the shaft outward or as listed,
 * with the tools for the selected one.
 */
export function Rail() {
  const { live } = useSession();
  const openDialog = useOpenPartDialog();
  const items = useRailItems();
  const heading = useId();
  const [order, setOrder] = useState<RailOrder>('station');
  const [renaming, setRenaming] = useState<string | null>(null);
  const ids = useOrderedIds(order);
  const byId = new Map(items.map((item) => [item.id, item]));
  const rows = ids.flatMap((id) => byId.get(id) ?? []);

  return (
    <section className="rail" aria-labelledby={heading} data-testid="rail">
      <header className="rail-head">
        <h2 className="ui-heading" id={heading}>
          {t('rail.title')}{' '}
          <span className="rail-subtitle">
            <HelpName id="share">
              <MathText text={t('rail.subtitle')} />
            </HelpName>
          </span>
        </h2>
        <select
          className="ui-select rail-order"
          aria-label={t('rail.order')}
          value={order}
          onChange={(event) => setOrder(event.target.value as RailOrder)}
        >
          <option value="station">{t('rail.byStation')}</option>
          <option value="list">{t('rail.asListed')}</option>
        </select>
      </header>
      <RailList
        rows={rows}
        order={order}
        renaming={renaming}
        onRename={setRenaming}
        label={t('rail.list')}
      />
      <div className="rail-legend" aria-hidden="true">
        <span>
          <span className="rail-mark" data-leans="centres" /> {t('rail.centres')}
        </span>
        <span>
          {t('rail.flees')} <span className="rail-mark" data-leans="flees" />
        </span>
      </div>
      <RailTools
        order={order}
        ids={ids}
        onRename={(id) => {
          live.flush();
          setRenaming(id);
        }}
      />
      <AddPart />
      <div className="rail-more">
        <button
          type="button"
          className="ui-button"
          title={t('shelf.openTitle')}
          aria-haspopup="dialog"
          data-testid="open-shelf"
          onClick={() => openDialog('shelf')}
        >
          {t('shelf.open')}
        </button>
        <button
          type="button"
          className="ui-button"
          title={t('massCard.openTitle')}
          aria-haspopup="dialog"
          data-testid="open-mass-card"
          onClick={() => openDialog('massCard')}
        >
          {t('massCard.open')}
        </button>
      </div>
    </section>
  );
}

/** Ids in the chosen order. By station it follows the parts, but only once a drag has ended. */
function useOrderedIds(order: RailOrder): readonly string[] {
  const session = useSession();
  const items = useRailItems();
  const listed = items.map((item) => item.id);
  const [stations, setStations] = useState<readonly string[]>([]);
  useEffect(() => watchStations(session, setStations), [session]);
  if (order === 'list') return listed;
  // Parts that came or went since the last frame: known ones keep their place, new ones stand last until then.
  const known = stations.filter((id) => listed.includes(id));
  return [...known, ...listed.filter((id) => !known.includes(id))];
}

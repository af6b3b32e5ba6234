import { Ellipsis } from 'lucide-react';
import { useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import type { Part } from '../../design/design';
import { partText, t } from '../../messages';
import { partType } from '../../parts/registry';
import type { ShelfItem } from '../../state/shelfItem';
import { displayRailMass, secondMomentText } from '../../state/shownUnits';
import { MathText } from '../../ui/MathText';
import { Menu, MenuItem } from '../../ui/Menu';
import { useAppState, useSession } from '../../ui/session';
import { itemFigures } from './comparison';
import { DescribeRow } from './DescribeRow';
import type { Said } from './said';
import { putIn, swapIn } from './shelfDesk';
import { saveShelf } from './shelfFiles';

interface Use {
  /** The selected part of the head. */
  readonly selected: Part | null;
  readonly onTick: (id: string) => void;
  readonly onRemove: (id: string) => void;
  readonly onSaid: (said: Said) => void;
}

/** What is on the shelf, with what each part comes to and what can be done with it. */
export function ShelfList(
  props: Use & { readonly items: readonly ShelfItem[]; readonly ticked: readonly string[] },
) {
  const [described, setDescribed] = useState<string | null>(null);
  const body = useRef<HTMLTableSectionElement>(null);

  /** The keyboard goes back to where the row was opened from. */
  function close(id: string): void {
    flushSync(() => setDescribed(null));
    const row = body.current?.querySelector(`[data-item="${CSS.escape(id)}"]`);
    row?.querySelector<HTMLElement>('[aria-haspopup="menu"]')?.focus();
  }

  return (
    <table className="shelf-list" aria-label={t('shelf.list')}>
      <thead>
        <tr>
          <th scope="col">
            <span className="ui-unseen">{t('shelf.headCompare')}</span>
          </th>
          <th scope="col">{t('shelf.headName')}</th>
          <th scope="col" className="shelf-number">
            {t('shelf.headMass')}
          </th>
          <th scope="col" className="shelf-number">
            <MathText text={t('shelf.headShare')} />
          </th>
          <th scope="col">
            <span className="ui-unseen">{t('shelf.headDo')}</span>
          </th>
        </tr>
      </thead>
      <tbody ref={body}>
        {props.items.map((item) =>
          item.id === described ? (
            <DescribeRow key={item.id} item={item} onDone={() => close(item.id)} />
          ) : (
            <Row
              key={item.id}
              {...props}
              item={item}
              isTicked={props.ticked.includes(item.id)}
              onDescribe={() => setDescribed(item.id)}
            />
          ),
        )}
      </tbody>
    </table>
  );
}

function Row(
  props: Use & {
    readonly item: ShelfItem;
    readonly isTicked: boolean;
    readonly onDescribe: () => void;
  },
) {
  const { item, selected, onSaid } = props;
  const session = useSession();
  const units = useAppState((state) => state.settings.units);
  const { mass, jyy, jzz } = itemFigures(item);
  const { name } = item;
  const kind = partText(`part.${item.kind}.label`, partType(item.kind).label);
  const fits = selected?.kind === item.kind ? selected : null;
  return (
    <tr data-item={item.id}>
      <td>
        <input
          type="checkbox"
          className="shelf-tick"
          aria-label={t('shelf.compare', { name })}
          checked={props.isTicked}
          onChange={() => props.onTick(item.id)}
        />
      </td>
      <th scope="row">
        <span className="shelf-name">{name}</span>
        <span className="shelf-kind">{item.note ? `${kind}. ${item.note}` : kind}</span>
      </th>
      <td className="shelf-number">{displayRailMass(mass, units)}</td>
      <td className="shelf-number">{secondMomentText(jyy - jzz, units)}</td>
      <td className="shelf-do">
        {fits && (
          <button
            type="button"
            className="ui-button"
            aria-label={t('shelf.swapInName', { name, part: fits.name })}
            title={t('shelf.swapInName', { name, part: fits.name })}
            data-testid="shelf-swap-in"
            onClick={() => onSaid(swapIn(session, item, fits.id))}
          >
            {t('shelf.swapIn')}
          </button>
        )}
        <button
          type="button"
          className="ui-button"
          aria-label={t('shelf.putInName', { name })}
          data-testid="shelf-put-in"
          onClick={() => onSaid(putIn(session, item))}
        >
          {t('shelf.putIn')}
        </button>
        <Menu
          label={t('shelf.more', { name })}
          title={t('shelf.more', { name })}
          className="ui-button ui-button-icon ui-button-bare"
          button={<Ellipsis aria-hidden="true" />}
        >
          <MenuItem onClick={props.onDescribe}>{t('shelf.describe')}</MenuItem>
          <MenuItem
            onClick={() => void saveShelf([item], name).then((said) => said && onSaid(said))}
          >
            {t('shelf.saveOne')}
          </MenuItem>
          <MenuItem onClick={() => props.onRemove(item.id)}>{t('shelf.remove')}</MenuItem>
        </Menu>
      </td>
    </tr>
  );
}

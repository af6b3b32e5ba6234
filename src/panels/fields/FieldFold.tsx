import { ChevronRight } from 'lucide-react';
import { type ReactNode, useId, useState } from 'react';
import { t } from '../../messages';
import { firstFold, followedFold } from './foldState';

/** Which groups of which kinds a person has opened or closed, while the page is open. */
const chosen = new Map<string, boolean>();

/**
 * A group of fields that folds. Until a person has opened or closed it for this kind of part, it is open where the part
 * has something of its own in it, and opens when it gets that; only a person closes it. What is folded is not made.
 */
export function FieldFold(props: {
  readonly kind: string;
  readonly group: string;
  readonly title: string;
  /** How many of its values are not the usual ones. */
  readonly changed: number;
  readonly children: ReactNode;
}) {
  const { changed } = props;
  const id = useId();
  const key = `${props.kind} ${props.group}`;
  const [fold, setFold] = useState(() => firstFold(chosen.get(key), changed));
  const now = followedFold(fold, changed);
  if (now !== fold) setFold(now);
  const { open } = now;

  function toggle(): void {
    chosen.set(key, !open);
    setFold({ open: !open, pressed: true });
  }

  return (
    <section className="fields-group fields-fold" aria-labelledby={`${id}-title`}>
      <h3 className="ui-heading fields-fold-head">
        <button
          type="button"
          id={`${id}-title`}
          className="fields-fold-button"
          aria-expanded={open}
          aria-controls={`${id}-body`}
          data-testid={`fold-${props.group}`}
          onClick={toggle}
        >
          <ChevronRight aria-hidden="true" />
          {props.title}
          {changed > 0 && (
            <span className="fields-fold-count">{t('fields.changed', { count: changed })}</span>
          )}
        </button>
      </h3>
      <div id={`${id}-body`} hidden={!open}>
        {open && props.children}
      </div>
    </section>
  );
}

import { ChevronRight } from 'lucide-react';
import { type ReactNode, useId, useState } from 'react';
import { t } from '../../messages';

/** Which groups of which kinds a person has opened or closed, while the page is open. */
const chosen = new Map<string, boolean>();

/**
 * A group of fields that folds. Until a person has opened or closed it for this kind of part, it is open where the part
 * has something of its own in it. What is folded is not made.
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
  const [own, setOwn] = useState(chosen.get(key));
  const open = own ?? changed > 0;

  function toggle(): void {
    chosen.set(key, !open);
    setOwn(!open);
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

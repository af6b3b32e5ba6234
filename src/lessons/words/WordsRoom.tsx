import { useEffect, useRef } from 'react';
import { useStore } from 'zustand';
import { sayHelp } from '../../state/help/helpText';
import { TOPICS, type TopicId } from '../../state/help/topics';
import { wordsDesk as desk } from '../../state/help/wordsDesk';
import { FormulaText } from '../../ui/help/FormulaText';
import { TopicBody } from '../../ui/help/TopicBody';
import { FIGURES } from './figures';
import { PrintWords } from './PrintWords';
import { inGroups, searchTopics } from './search';
import { useShownValues } from './useShownValues';
import './words.css';

/** The glossary: every quantity with its formula and the numbers of this head, and the words of the trade. */
export function WordsRoom() {
  const shown = useStore(desk, (state) => state.shown);
  const search = useStore(desk, (state) => state.search);
  const values = useShownValues();
  const found = searchTopics(search);
  const count = found.length === 1 ? 'help.countOne' : 'help.count';

  return (
    <section className="lower-room" aria-label={sayHelp('help.room')} data-testid="words-room">
      <div className="lower-head">
        <input
          type="search"
          className="words-search"
          aria-label={sayHelp('help.search')}
          placeholder={sayHelp('help.search')}
          data-testid="words-search"
          value={search}
          onChange={(event) => desk.setState({ search: event.target.value })}
          onKeyDown={(event) => {
            if (event.key === 'Enter' && found.length > 0) desk.setState({ shown: found[0] });
          }}
        />
        <span className="lower-quiet" role="status">
          {found.length === 0 ? sayHelp('help.nothing') : sayHelp(count, { count: found.length })}
        </span>
        <span className="lower-quiet">{sayHelp('help.valuesAt', { pitch: values.pitch })}</span>
        <PrintWords />
      </div>
      <div className="words-body-grid">
        <Entries found={found} shown={shown} grouped={search === ''} values={values} />
        <Entry id={shown} onSee={(id) => desk.setState({ shown: id, search: '' })} />
      </div>
    </section>
  );
}

function Entries(props: {
  readonly found: readonly TopicId[];
  readonly shown: TopicId;
  readonly grouped: boolean;
  readonly values: ReturnType<typeof useShownValues>;
}) {
  const { found, shown, grouped, values } = props;
  const list = useRef<HTMLElement>(null);
  // The entry that another room asked for is in sight.
  useEffect(() => {
    const row = list.current?.querySelector<HTMLElement>(`[data-testid="word-${shown}"]`);
    if (list.current && row) scrollTo(list.current, row);
  }, [shown]);
  const groups = grouped ? inGroups(found) : [{ group: null, ids: found }];
  return (
    <nav className="words-list" aria-label={sayHelp('help.list')} ref={list}>
      {groups.map(({ group, ids }) => (
        <div key={group ?? ''}>
          {group !== null && (
            <h3 className="ui-heading words-group">{sayHelp(`help.group.${group}`)}</h3>
          )}
          <ul>
            {ids.map((id) => (
              <li key={id}>
                <Row id={id} value={values.of[id]} current={id === shown} />
              </li>
            ))}
          </ul>
        </div>
      ))}
    </nav>
  );
}

function Row(props: {
  readonly id: TopicId;
  readonly value: string | undefined;
  readonly current: boolean;
}) {
  return (
    <button
      type="button"
      className="words-row"
      aria-current={props.current ? 'true' : undefined}
      data-testid={`word-${props.id}`}
      onClick={() => desk.setState({ shown: props.id })}
    >
      <span>
        <FormulaText text={sayHelp(`help.${props.id}.name`)} />
      </span>
      {props.value && (
        <span className="words-value">
          <FormulaText text={props.value} />
        </span>
      )}
    </button>
  );
}

/** One entry in full; scrolled to its top when another is shown. */
function Entry(props: { readonly id: TopicId; readonly onSee: (id: TopicId) => void }) {
  const { id } = props;
  const Drawing = FIGURES[id];
  return (
    <article
      key={id}
      className="words-entry"
      tabIndex={0}
      aria-label={sayHelp(`help.${id}.name`)}
      data-testid="words-entry"
    >
      <h3 className="words-title">
        <FormulaText text={sayHelp(`help.${id}.name`)} />
        {TOPICS[id].symbol && (
          <span className="words-symbol">
            <FormulaText text={TOPICS[id].symbol ?? ''} />
          </span>
        )}
      </h3>
      <TopicBody id={id} onSee={props.onSee} figure={Drawing && <Drawing />} />
    </article>
  );
}

function scrollTo(list: HTMLElement, row: HTMLElement): void {
  const [box, own] = [list.getBoundingClientRect(), row.getBoundingClientRect()];
  if (own.top < box.top || own.bottom > box.bottom) {
    list.scrollTop += own.top - box.top - box.height / 3;
  }
}

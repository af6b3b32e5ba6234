import { useState } from 'react';
import { createPortal, flushSync } from 'react-dom';
import { sayHelp } from '../../state/help/helpText';
import { TOPIC_IDS, type TopicId } from '../../state/help/topics';
import { FormulaText } from '../../ui/help/FormulaText';
import { TopicBody } from '../../ui/help/TopicBody';
import { useAppState } from '../../ui/session';
import { FIGURES } from './figures';
import { inGroups } from './search';

/** Prints the whole glossary with the numbers of the head; on the page there is only the button. */
export function PrintWords() {
  const [printing, setPrinting] = useState(false);
  const name = useAppState((state) => state.design.name);
  function print(): void {
    // The sheets have to be there before the browser looks.
    flushSync(() => setPrinting(true));
    globalThis.print();
    setPrinting(false);
  }
  return (
    <>
      <button type="button" className="ui-button" data-testid="words-print" onClick={print}>
        {sayHelp('help.print')}
      </button>
      {printing &&
        createPortal(
          <div className="words-print" data-testid="words-sheets">
            <h1>{sayHelp('help.printTitle', { name })}</h1>
            <p className="words-print-note">{sayHelp('help.worth')}</p>
            {inGroups(TOPIC_IDS).map(({ group, ids }) => (
              <section key={group}>
                <h2>{sayHelp(`help.group.${group}`)}</h2>
                {ids.map((id) => (
                  <PrintedEntry key={id} id={id} />
                ))}
              </section>
            ))}
          </div>,
          document.body,
        )}
    </>
  );
}

function PrintedEntry({ id }: { readonly id: TopicId }) {
  const Drawing = FIGURES[id];
  return (
    <article>
      <h3>
        <FormulaText text={sayHelp(`help.${id}.name`)} />
      </h3>
      <TopicBody id={id} onSee={ignore} figure={Drawing && <Drawing />} />
    </article>
  );
}

/** Paper has nothing to press. */
function ignore(): void {}

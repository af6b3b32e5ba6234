import { useId, useRef } from 'react';
import { MathText } from '../../../ui/MathText';
import { useAppState, useSession } from '../../../ui/session';
import { useLive } from '../../../ui/useLive';
import type { Lesson } from '../lesson';
import { quantityText } from '../quantityText';
import { say } from '../say';

/** The numbers that the lesson is about, as the head is turned: written to the page directly, not through React. */
export function WatchList({ lesson }: { readonly lesson: Lesson }) {
  const { store } = useSession();
  const heading = useId();
  const list = useRef<HTMLDListElement>(null);
  const units = useAppState((state) => state.settings.units);
  const { watch } = lesson.scene;
  useLive((reading) => {
    const { design, pitchDeg } = store.getState();
    const head = { design, reading, pitchDeg };
    const cells = list.current?.querySelectorAll('dd') ?? [];
    for (const [at, cell] of cells.entries()) {
      const text = quantityText(head, watch[at], units);
      if (cell.textContent !== text) cell.textContent = text;
    }
  });
  if (watch.length === 0) return null;
  return (
    <section className="lessons-part" aria-labelledby={heading}>
      <h3 className="ui-heading" id={heading}>
        {say('lessonRoom.watch')}
      </h3>
      <dl className="lessons-watch" ref={list} data-testid="lesson-watch">
        {watch.map(({ label }) => (
          <div key={label}>
            <dt>
              <MathText text={label} />
            </dt>
            <dd />
          </div>
        ))}
      </dl>
    </section>
  );
}

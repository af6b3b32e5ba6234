import { useStore } from 'zustand';
import { t } from '../../messages';
import { markedText } from '../../state/words/markedText';
import { useLessonDoor, useShownPage } from '../../ui/lessonDoor';
import { MathText } from '../../ui/MathText';
import { useServices } from '../AppContext';
import './lesson.css';

/** Above everything while a lesson's head is on the stage: whose head it is, where the own design is, and the ways back. */
export function LessonLine() {
  const door = useLessonDoor();
  const page = useShownPage();
  const { title, task } = useStore(door.store);
  const own = useStore(door.own.store, (state) => state.design.name);
  const units = useStore(door.own.store, (state) => state.settings.units);
  const { desk } = useServices();
  if (page === 'own') return null;

  function take(): void {
    const { design } = door.shown().store.getState();
    desk.openDesign(design, t('lessons.taken', { name: design.name }));
  }

  return (
    <section className="lesson-line" aria-label={t('lessons.line')} data-testid="lesson-line">
      <p>
        <strong>{t('lessons.onStage', { title })}</strong> {t('lessons.waits', { name: own })}
        <span className="lesson-line-task">
          <MathText text={markedText(task, units)} />
        </span>
      </p>
      <span className="lesson-line-ways">
        <button
          type="button"
          className="ui-button"
          data-testid="lesson-leave"
          onClick={() => door.leave()}
        >
          {t('lessons.leave')}
        </button>
        <button
          type="button"
          className="ui-button"
          title={t('lessons.takeHelp')}
          data-testid="lesson-take"
          onClick={take}
        >
          {t('lessons.take')}
        </button>
      </span>
    </section>
  );
}

import { t } from '../../messages';
import { Books } from './Books';
import { HillsPlot } from './HillsPlot';
import { LetGoButtons } from './LetGoButtons';
import { LetGoChoices } from './LetGoChoices';
import { LetGoWords } from './LetGoWords';
import { PushHint } from './PushHint';
import { TracePlot } from './TracePlot';
import './letGo.css';

/** The grip let go in slowed time: energy as hills and wells with the ball in it, pitch against time, and what came of it. */
export function LetGoRoom() {
  return (
    <section className="lower-room letgo" aria-label={t('lower.letGo')} data-testid="letgo-room">
      <LetGoButtons />
      <div className="letgo-body">
        <HillsPlot />
        <TracePlot />
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard */}
        <section className="letgo-side" tabIndex={0} aria-label={t('letGo.side')}>
          <LetGoWords />
          <Books />
          <PushHint />
          <LetGoChoices />
          <p className="lower-quiet letgo-small">{t('letGo.assumes')}</p>
          <p className="letgo-small">{t('letGo.caution')}</p>
        </section>
      </div>
    </section>
  );
}

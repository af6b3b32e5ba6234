import { t } from '../../messages';
import { RunPanel } from './RunPanel';
import { SlopeBars } from './SlopeBars';
import './closeness.css';

/** How closely the parts must be made: what each number does to the force, and heads made up within the tolerances. */
export function ClosenessRoom() {
  return (
    <section
      className="lower-room closeness"
      aria-label={t('lower.closely')}
      data-testid="closeness-room"
    >
      <SlopeBars />
      <RunPanel />
    </section>
  );
}

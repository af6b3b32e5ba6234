import { useEffect, useId, useRef } from 'react';
import { t } from '../../messages';
import { HelpName } from '../../ui/help/HelpName';
import { useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';
import { DialLegend } from './DialLegend';
import { createDialView, type DialView } from './dialView';
import { LetGoButton } from './LetGoButton';
import './dial.css';

/** The pitch dial: the head seen along the feathering axis from the tip, with rest and flee angles round it. */
export function PitchDial() {
  const session = useSession();
  const svg = useRef<SVGSVGElement>(null);
  const view = useRef<DialView | null>(null);
  const title = useId();

  useEffect(() => {
    if (!svg.current) return;
    const made = createDialView(svg.current, session, t('dial.pointer'));
    view.current = made;
    return () => {
      made.destroy();
      view.current = null;
    };
  }, [session]);
  useLive((reading) => view.current?.updateInside(reading), 'dial');
  useLive((reading) => view.current?.updateRing(reading), 'ring');

  return (
    <section className="dial" aria-labelledby={title} data-testid="pitch-dial">
      <div className="dial-head">
        <h2 className="dial-title" id={title}>
          <HelpName id="pitchDial">{t('dial.title')}</HelpName>
        </h2>
        <LetGoButton />
      </div>
      <div className="dial-view">
        <svg ref={svg} className="dial-svg" role="group" aria-labelledby={title} />
      </div>
      <DialLegend />
    </section>
  );
}

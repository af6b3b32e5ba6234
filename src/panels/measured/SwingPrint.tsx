import { useEffect, useRef } from 'react';
import { SWING_AXES } from '../../design/measured';
import { t } from '../../messages';
import { RuleList } from './RuleList';
import { BalanceDrawing, SwingDrawing } from './SwingDrawing';
import { BALANCE_RULES, SWING_RULES } from './swingRules';

const TIMING = [
  ['measured.spacing', 'mm'],
  ['measured.length', 'mm'],
  ['measured.swings', ''],
  ['measured.seconds', 's'],
  ['measured.amplitude', '\u00b0'],
  ['measured.cradleMass', 'g'],
] as const;
const BALANCE = [
  ['measured.mass', 'g'],
  ['measured.balanceSpan', 'mm'],
  ['measured.balanceChord', 'mm'],
] as const;

/**
 * The sheet on paper, with blanks to fill in: the only thing printed while the dialog is open. What goes to paper is a
 * copy outside React, since a page laid out anew for the width of the paper may close the dialog meanwhile.
 */
export function SwingPrint(props: { readonly name: string }) {
  const sheet = useRef<HTMLDivElement>(null);
  useEffect(() => {
    function lay(): void {
      if (!sheet.current) return;
      const paper = sheet.current.cloneNode(true) as HTMLElement;
      paper.hidden = false;
      paper.className = 'swing-print';
      document.body.append(paper);
      window.addEventListener('afterprint', () => paper.remove(), { once: true });
    }
    window.addEventListener('beforeprint', lay);
    return () => window.removeEventListener('beforeprint', lay);
  }, []);
  return (
    <div ref={sheet} hidden aria-hidden="true">
      <h1>{t('measured.sheet', { part: props.name })}</h1>
      <section className="swing-print-row">
        <BalanceDrawing />
        <div>
          <h2>{t('measured.step.balance')}</h2>
          <Blanks blanks={BALANCE} />
        </div>
      </section>
      <RuleList rules={BALANCE_RULES} />
      {SWING_AXES.map((about) => (
        <section className="swing-print-row" key={about}>
          <SwingDrawing about={about} />
          <div>
            <h2>{t(`measured.step.${about}`)}</h2>
            <p>{t(`measured.hang.${about}`)}</p>
            <Blanks blanks={TIMING} />
          </div>
        </section>
      ))}
      <RuleList rules={SWING_RULES} />
    </div>
  );
}

function Blanks(props: { readonly blanks: typeof TIMING | typeof BALANCE }) {
  return (
    <dl className="swing-blanks">
      {props.blanks.map(([label, unit]) => (
        <div key={label}>
          <dt>{t(label)}</dt>
          <dd>
            <span className="swing-blank" />
            {unit}
          </dd>
        </div>
      ))}
    </dl>
  );
}

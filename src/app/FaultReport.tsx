import { useRef, useState } from 'react';
import { t } from '../messages';
import { faultReport } from './reportText';

/** What a person can hand on about a fault: made here, shown whole, sent nowhere. */
export function FaultReport({ place, error }: { readonly place: string; readonly error: Error }) {
  const [text] = useState(() => faultReport(place, error));
  const [said, setSaid] = useState('');
  const area = useRef<HTMLTextAreaElement>(null);

  async function copy(): Promise<void> {
    try {
      await navigator.clipboard.writeText(text);
      setSaid(t('app.reportCopied'));
    } catch {
      area.current?.select();
      setSaid(t('app.reportSelected'));
    }
  }

  return (
    <details className="app-report">
      <summary>{t('app.report')}</summary>
      <p>{t('app.reportNote')}</p>
      <textarea
        ref={area}
        readOnly
        rows={8}
        value={text}
        aria-label={t('app.reportText')}
        spellCheck={false}
      />
      <button type="button" className="ui-button" onClick={() => void copy()}>
        {t('app.reportCopy')}
      </button>
      <span role="status">{said}</span>
    </details>
  );
}

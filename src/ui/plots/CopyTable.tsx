import { useState } from 'react';
import { t } from '../../messages';

/** Puts what a plot shows on the clipboard as a table; says whether it came there. */
export function CopyTable(props: { readonly text: () => string | null; readonly testId: string }) {
  const [said, setSaid] = useState('');

  async function copy(): Promise<void> {
    const text = props.text();
    if (text === null) {
      setSaid(t('plots.empty'));
      return;
    }
    try {
      await navigator.clipboard.writeText(text);
      setSaid(t('loads.copied'));
    } catch {
      setSaid(t('loads.copyFailed'));
    }
  }

  return (
    <>
      <button
        type="button"
        className="ui-button ui-button-small"
        data-testid={props.testId}
        onClick={() => void copy()}
      >
        {t('loads.copy')}
      </button>
      <span role="status">{said}</span>
    </>
  );
}

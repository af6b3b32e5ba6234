import { t } from '../../messages';
import type { Notice } from '../../state/store';
import { isCancelled, reasonOf } from '../../ui/fileErrors';
import { fileSave, savedText } from '../../ui/fileSave';
import { fileStem } from '../../ui/fileStem';
import { type CardSheet, csvText, htmlText, tabText } from './cardSheet';

/** Puts the card on the clipboard, for a spreadsheet and for a letter; as plain text where the browser knows no more. */
export async function copyCard(sheet: CardSheet): Promise<Notice> {
  const [plain, html] = [tabText(sheet), htmlText(sheet)];
  try {
    if (typeof ClipboardItem === 'undefined') await navigator.clipboard.writeText(plain);
    else {
      const item = new ClipboardItem({
        'text/plain': new Blob([plain], { type: 'text/plain' }),
        'text/html': new Blob([html], { type: 'text/html' }),
      });
      await navigator.clipboard.write([item]);
    }
    return { tone: 'plain', text: t('massCard.copied') };
  } catch (error) {
    return { tone: 'warning', text: t('massCard.copyFailed', { reason: reasonOf(error) }) };
  }
}

/** Saves the card as a CSV file. Null where the person thought better of it. */
export async function saveCard(sheet: CardSheet, name: string): Promise<Notice | null> {
  const fileName = `${fileStem(name, 'head')}-mass-card.csv`;
  const text = new Blob([csvText(sheet)], { type: 'text/csv;charset=utf-8' });
  try {
    const saved = await fileSave(text, {
      fileName,
      description: 'CSV',
      extensions: ['.csv'],
      mimeTypes: ['text/csv'],
      id: 'stillgrip-card',
    });
    return { tone: 'plain', text: savedText(saved, fileName) };
  } catch (error) {
    if (isCancelled(error)) return null;
    return { tone: 'warning', text: t('massCard.saveFailed', { reason: reasonOf(error) }) };
  }
}

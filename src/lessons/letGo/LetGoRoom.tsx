import { t } from '../../messages';

export function LetGoRoom() {
  return <p className="app-loading">{t('lower.letGo')}</p>;
}

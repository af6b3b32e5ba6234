import { t } from '../../messages';

export function WordsRoom() {
  return <p className="app-loading">{t('lower.words')}</p>;
}

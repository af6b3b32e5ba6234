import { t } from '../../messages';

export function RacketRoom() {
  return <p className="app-loading">{t('lower.racket')}</p>;
}

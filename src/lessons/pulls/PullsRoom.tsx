import { t } from '../../messages';

export function PullsRoom() {
  return <p className="app-loading">{t('lower.pulls')}</p>;
}

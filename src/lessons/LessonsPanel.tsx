import { t } from '../messages';

export function LessonsPanel() {
  return <p className="app-loading">{t('app.lessons')}</p>;
}

import type { OFFLINE as EN } from '../en/offline';

export const OFFLINE = {
  'offline.title': 'Diese Seite',
  'offline.kept.no': 'Die Seite ist noch nicht für den Gebrauch ohne Netz aufbewahrt.',
  'offline.kept.fetching': 'Die Seite wird gerade für den Gebrauch ohne Netz aufbewahrt.',
  'offline.kept.yes': 'Die Seite ist in diesem Browser aufbewahrt und öffnet sich ohne Netz.',
  'offline.kept.unable':
    'Dieser Browser bewahrt die Seite hier nicht auf: Ohne Netz öffnet sie sich nicht. Als Dateien gesicherte Entwürfe betrifft das nicht.',
  'offline.keptLater':
    'Was STEP liest und schreibt (23 und 8 MB), wird beim ersten Gebrauch aufbewahrt; bis dahin braucht es einmal das Netz.',
  'offline.licences': 'Lizenzen der Bestandteile dieser Seite',
  'offline.update': 'Eine neuere Fassung dieser Seite liegt bereit.',
  'offline.updateTaken':
    'Ein anderer Tab hat eine neuere Fassung geladen; dieser arbeitet mit der alten weiter.',
  'offline.updateKeeps': 'Beim Laden öffnet sich die Seite neu, mit dem Entwurf, wie er ist.',
  'offline.updateSaveFirst':
    'Dieser Tab bewahrt den Entwurf nicht selbst auf: zuerst als Datei sichern.',
  'offline.take': 'Laden',
  'offline.takeAnyway': 'Trotzdem laden',
  'offline.notNow': 'Nicht jetzt',
} satisfies Readonly<Record<keyof typeof EN, string>>;

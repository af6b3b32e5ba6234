import type { KEEP as EN } from '../en/keep';

export const KEEP = {
  'keep.title': 'Entwürfe in diesem Browser und frühere Stände',
  'keep.otherTab':
    'Dieser Entwurf ist in einem anderen Tab offen, der ihn aufbewahrt. Was hier geändert wird, wird als Kopie aufbewahrt.',
  'keep.takeOver': 'Hier weiterführen',
  'keep.copy': 'An einer Kopie arbeiten',
  'keep.saveFile': 'Als Datei sichern',
  'keep.trouble.full':
    'Nicht aufbewahrt: Der Speicher des Browsers ist voll. Die Arbeit ist nur im Arbeitsspeicher; als Datei sichern. Entwürfe, die entfernt und dann gelöscht werden, machen Platz.',
  'keep.trouble.refused':
    'Nicht aufbewahrt: Der Browser lässt diese Seite nichts speichern. Die Arbeit ist nur im Arbeitsspeicher; als Datei sichern.',
  'keep.trouble.blocked':
    'Nicht aufbewahrt: Ein anderer Tab mit einer älteren Seite hält den Speicher fest. Ihn schließen oder die Arbeit als Datei sichern.',
  'keep.trouble.newerPage':
    'Nicht aufbewahrt: Eine neuere Fassung dieser Seite hat den Speicher geändert. Die Arbeit als Datei sichern, dann neu laden.',
  'keep.trouble.slow':
    'Nicht aufbewahrt: Der Speicher des Browsers antwortet nicht. Die Arbeit ist nur im Arbeitsspeicher; als Datei sichern.',
  'keep.trouble.broken':
    'Nicht aufbewahrt: Der Speicher des Browsers versagt. Die Arbeit ist nur im Arbeitsspeicher; als Datei sichern.',
  'keep.slow':
    'Der Browser speichert den Entwurf nur langsam. Das zuletzt Getane ist noch nicht aufbewahrt.',
  'keep.recovered': 'Der Browser speichert den Entwurf wieder: Alles ist aufbewahrt.',
  'keep.copiedElsewhere':
    'Ein anderer Tab arbeitet an diesem Entwurf. Der hiesige geht als Kopie weiter; beide stehen unter der Uhr neben Öffnen.',
  'keep.copiedConflict':
    'Dieser Entwurf wurde anderswo geändert oder entfernt. Der hiesige geht als Kopie weiter; nichts wurde überschrieben.',
  'keep.copiedNewer':
    'Eine neuere Fassung dieser Seite hat diesen Entwurf geschrieben. Der hiesige geht als Kopie weiter; jener bleibt unberührt.',
  'keep.caughtUp':
    'Auf den Stand gebracht, den der andere Tab hergestellt hat. Rückgängig zeigt, was hier stand.',
  'keep.lost':
    'Der Browser hat die hier aufbewahrten Entwürfe verworfen. Eine Datei auf der eigenen Platte ist davor sicher.',
  'keep.unread':
    'Die in diesem Browser aufbewahrten Entwürfe lassen sich gerade nicht lesen. Nichts wird überschrieben; neu laden, um es noch einmal zu versuchen.',
  'keep.damaged':
    'Der letzte Entwurf war nicht lesbar ({reason}). Er und seine früheren Stände liegen unter der Uhr neben Öffnen und sind nicht verworfen.',
  'keep.newer':
    'Den letzten Entwurf hat eine neuere Fassung dieser Seite gemacht. Er bleibt unberührt; neu laden, um diese Fassung zu bekommen.',
  'keep.opened': '{name} geöffnet. Rückgängig kehrt zu dem zurück, was offen war.',
  'keep.footKeeping': 'Wird aufbewahrt …',
  'keep.footOtherTab': 'Aufbewahrt vom anderen Tab',
  'keep.thinned':
    'Der Speicher des Browsers ist voll. Damit die Arbeit erhalten bleibt, wurden frühere Stände ohne Namen aufgegeben: {states}. Entwürfe als Dateien sichern und löschen, was nicht mehr gebraucht wird.',
  'keep.thinnedRemoved':
    'Der Speicher des Browsers ist voll. Damit die Arbeit erhalten bleibt, wurden entfernte Entwürfe endgültig aufgegeben: {removed}. Entwürfe als Dateien sichern und löschen, was nicht mehr gebraucht wird.',
  'keep.thinnedBoth':
    'Der Speicher des Browsers ist voll. Damit die Arbeit erhalten bleibt, wurden frühere Stände ohne Namen ({states}) und entfernte Entwürfe ({removed}) endgültig aufgegeben. Entwürfe als Dateien sichern.',
} satisfies Readonly<Record<keyof typeof EN, string>>;

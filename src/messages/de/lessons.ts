import type { LESSONS as EN } from '../en/lessons';

/** Lektionen: was die Seite um sie herum sagt. Die Texte einer Lektion selbst stehen in ihrer Datei. */
export const LESSONS = {
  'lessons.line': 'Lektion auf der Bühne',
  'lessons.onStage': 'Das ist der Kopf der Lektion „{title}“.',
  'lessons.waits': 'Der eigene Entwurf, {name}, wartet unberührt.',
  'lessons.stepDone': 'Dieser Schritt ist geschafft: unter Lektionen weitermachen.',
  'lessons.leave': 'Zurück zum eigenen Entwurf',
  'lessons.take': 'Diesen Kopf als Entwurf nehmen',
  'lessons.takeHelp':
    'Öffnet den Kopf, wie er jetzt ist, anstelle des eigenen Entwurfs. Rückgängig holt diesen zurück.',
  'lessons.taken': '{name} aus der Lektion geöffnet.',
  'lessons.refused': 'Diese Lektionsdatei wurde nicht geöffnet. {reason}',
} satisfies Readonly<Record<keyof typeof EN, string>>;

import type { HELP_SOURCES as EN } from '../../en/help/sources';

/** Where formulas and values are from. */
export const HELP_SOURCES = {
  'help.source.definition': 'Festlegung (Definition).',
  'help.source.mechanics':
    'Allgemeine Mechanik: Kraft ist Masse mal Beschleunigung, Moment ist Kraft mal Hebelarm.',
  'help.source.propellerMoment':
    'Das Fliehkraftmoment eines Blattes um seine Verstellachse, wie Lehrbücher über Propeller und Hubschrauber es angeben (aus dem Gedächtnis); hier aus der Kraft auf jedes Element hergeleitet und mit einem unabhängigen Mehrkörperprogramm verglichen.',
  'help.source.virtualWork':
    'Prinzip der virtuellen Arbeit, allgemeine Mechanik: Was der Blatthalter beim Drehen leistet, nimmt der Schieber auf seinem Weg auf.',
  'help.source.racketEffect':
    'Eulers Gleichungen des starren Körpers, allgemeine Mechanik (aus dem Gedächtnis).',
  'help.source.ellipse':
    'Hauptachsen eines symmetrischen Tensors in einer Ebene, allgemeine Mechanik (aus dem Gedächtnis).',
  'help.source.plate':
    'Dass eine dünne freie Platte einmal je Umdrehung schwingt: Lehrbücher über Hubschrauber (aus dem Gedächtnis).',
  'help.source.iso76':
    'ISO 76, statisch äquivalente Lagerlast von Kugellagern (aus dem Gedächtnis).',
  'help.source.en1993':
    'EN 1993-1-8, Schrauben auf Abscheren und Bolzen auf Biegung (teils aus dem Gedächtnis).',
  'help.source.iso898': 'ISO 898-1 und ISO 3506-1, Festigkeitsklassen von Schrauben.',
  'help.source.iso21940': 'ISO 21940-11, Auswuchtgüte von Rotoren.',
  'help.source.gum':
    'Leitfaden zur Angabe der Unsicherheit beim Messen, JCGM 100 (aus dem Gedächtnis).',
  'help.source.coulomb':
    'Trockene Reibung, allgemeine Mechanik: Sie hält bis zu ihrem Betrag und nicht weiter.',
  'help.source.bearingCatalogues':
    'Form der Gleichung, wie Kataloge von Lagerherstellern sie angeben (aus dem Gedächtnis); die Beiwerte sind die der Teile.',
  'help.source.momentum':
    'Blattelemente mit Impulsbilanz und Spitzenverlust im Schwebeflug, wie Lehrbücher es angeben (aus dem Gedächtnis). Eine Schätzung.',
  'help.source.flatPlate':
    'Dünne Profile drehen um den Viertelpunkt, eine überzogene ebene Platte um ihre Mitte: Lehrbücher der Aerodynamik (aus dem Gedächtnis).',
  'help.source.trade': 'Übliche Praxis, ohne Quelle.',
  'help.source.dynamics': 'Eine Masse an einer Feder, allgemeine Mechanik.',
  'help.source.statistics': 'Statistik der Lehrbücher (aus dem Gedächtnis).',
  'help.source.ours': 'Wie diese Seite es festlegt.',
} as const satisfies Readonly<Record<keyof typeof EN, string>>;

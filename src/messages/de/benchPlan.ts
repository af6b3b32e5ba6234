import type { BENCH_PLAN as EN } from '../en/benchPlan';

export const BENCH_PLAN = {
  'bench.rung.drag': 'Reibung im Stand',
  'bench.rung.bare': 'Blatthalter allein',
  'bench.rung.bolt': 'Mit Bolzen',
  'bench.rung.ordinary': 'Mit Blatt und gewöhnlichem Bolzen',
  'bench.rung.asDesigned': 'Wie entworfen',
  'bench.safety.guard':
    'Eine Schutzwand steht rings um den Rotor und hält auf, was sich lösen kann.',
  'bench.safety.eyes': 'Augenschutz auf, für alle im Raum.',
  'bench.safety.plane': 'Niemand und nichts von Wert ist in der Drehebene.',
  'bench.safety.bolt': 'Kein Bolzen, der verbogen oder überdreht war, wird wieder verwendet.',
  'bench.safety.nut': 'Eine neue Sicherungsmutter: Eine gebrauchte hält nicht mehr wie zuvor.',
  'bench.safety.nothingLoose':
    'Jedes Teil ist montiert, gezählt und fest; Werkzeuge und Schlüssel sind weggeräumt.',
  'bench.safety.power': 'Der Strom lässt sich von außerhalb der Drehebene abschalten.',
  'bench.safety.slow': 'Langsam beginnen, hinhören, stufenweise steigern.',
  'bench.safety.stop': 'Der Rotor steht still, Strom aus, bevor eine Hand in die Nähe kommt.',
  'bench.safety.inspect':
    'Nach jedem Lauf werden Bolzen, Muttern, Blätter und Blatthalter auf Spuren und Risse angesehen.',
  'bench.safety.note':
    'Ein Ergebnis ist eine Schätzung. Teile, die Blätter tragen, verantwortet ihr Hersteller, und wo Vorschriften gelten, ein zugelassener Ingenieur.',
} satisfies Readonly<Record<keyof typeof EN, string>>;

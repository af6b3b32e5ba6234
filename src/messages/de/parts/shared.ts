/** Help that many part types share. */
export const DENSITY_HELP =
  'Masse eines Kubikmeters des Werkstoffs: Stahl 7850, Aluminium 2700, Polyamid 1140.';
const ROD_DENSITIES = 'Kohlefaserstab 1550, Stahl 7850, Messing 8500, Wolframlegierung 17500';

/** The five dimensions and the density of a spar in the blade; `the` is it with its article in genitive. */
export function sparTexts(key: string, label: string, the: string): Record<string, string> {
  const name = (field: string) => `part.blade.${key}${field}`;
  return {
    [`${name('DiameterMm')}.label`]: `${label}: Durchmesser`,
    [`${name('DiameterMm')}.help`]: `Durchmesser ${the}, der längs des Blatts in halber Höhe des Profils liegt; 0 für keinen.`,
    [`${name('BoreMm')}.label`]: `${label}: Bohrung`,
    [`${name('BoreMm')}.help`]: `Durchmesser der leeren Bohrung ${the}; 0 für einen vollen Stab.`,
    [`${name('OffsetMm')}.label`]: `${label}: Versatz`,
    [`${name('OffsetMm')}.help`]: `Abstand ${the} von der Bolzenachse zur Vorderkante hin; negativ liegt dahinter.`,
    [`${name('StartMm')}.label`]: `${label}: Anfang`,
    [`${name('StartMm')}.help`]: `Abstand von der Bolzenachse zum Anfang ${the}, im Profilteil.`,
    [`${name('EndMm')}.label`]: `${label}: Ende`,
    [`${name('EndMm')}.help`]: `Abstand von der Bolzenachse zum Ende ${the}.`,
    [`${name('DensityKgM3')}.label`]: `${label}: Dichte`,
    [`${name('DensityKgM3')}.help`]: `Masse eines Kubikmeters ${the}: ${ROD_DENSITIES}.`,
  };
}

/** The dimensions and the density of a weight in the blade; `the` is it with its article in genitive. */
export function weightTexts(key: string, label: string, the: string): Record<string, string> {
  const name = (field: string) => `part.blade.${key}${field}`;
  return {
    [`${name('DiameterMm')}.label`]: `${label}: Durchmesser`,
    [`${name('DiameterMm')}.help`]: `Durchmesser ${the}, das längs des Blatts in halber Höhe des Profils liegt; 0 für keines.`,
    [`${name('LengthMm')}.label`]: `${label}: Länge`,
    [`${name('LengthMm')}.help`]: `Länge ${the} längs des Blatts.`,
    [`${name('StationMm')}.label`]: `${label}: Ort`,
    [`${name('StationMm')}.help`]: `Abstand von der Bolzenachse zur Mitte ${the}.`,
    [`${name('OffsetMm')}.label`]: `${label}: Versatz`,
    [`${name('OffsetMm')}.help`]: `Abstand ${the} von der Bolzenachse zur Vorderkante hin; negativ liegt dahinter.`,
    [`${name('DensityKgM3')}.label`]: `${label}: Dichte`,
    [`${name('DensityKgM3')}.help`]: `Masse eines Kubikmeters ${the}: ${ROD_DENSITIES}.`,
  };
}

/** What a body from a mesh file says of the file. */
export function meshTexts(kind: string): Record<string, string> {
  const name = (field: string) => `part.${kind}.${field}`;
  return {
    [`${name('unit')}.label`]: 'Einheit der Datei',
    [`${name('unit')}.help`]:
      'Wofür eine Längeneinheit der Datei steht; sie streckt den ganzen Körper.',
    [name('unit.mm')]: 'mm',
    [name('unit.cm')]: 'cm',
    [name('unit.m')]: 'm',
    [name('unit.in')]: 'Zoll',
    [name('unit.micron')]: 'Mikrometer',
    [name('unit.ft')]: 'Fuß',
    [`${name('turnDeg')}.label`]: 'Drehung der Datei',
    [`${name('turnDeg')}.help`]:
      'Dreht die Achsen der Datei um die festen Achsen x, dann y, dann z des Teils.',
    [`${name('shiftMm')}.label`]: 'Verschiebung der Datei',
    [`${name('shiftMm')}.help`]: 'Wo der Nullpunkt der Datei nach der Drehung im Teil liegt.',
    [`${name('sourceName')}.label`]: 'Herkunft',
    [`${name('sourceName')}.help`]: 'Name der Datei, aus der der Körper gelesen wurde.',
    [`${name('triangleCount')}.label`]: 'Dreiecke',
    [`${name('triangleCount')}.help`]:
      'Wie viele Dreiecke gewogen wurden; das Bild darf weniger haben.',
    [`${name('volumeMoments')}.label`]: 'Volumenmomente',
    [`${name('volumeMoments')}.help`]:
      'Volumen, erste und zweite Momente des Volumens um den Nullpunkt der Datei, in ihren Einheiten.',
    [`${name('picture')}.label`]: 'Bild',
    [`${name('picture')}.help`]:
      'Die Oberfläche, die gezeichnet wird, beim Lesen der Datei als Text gepackt.',
  };
}

/** The seats of a grip, drawn or from a mesh. */
export function seatTexts(kind: string): Record<string, string> {
  return {
    [`part.${kind}.socket.armSeat`]: 'Auf der Hülse',
    [`part.${kind}.socket.boltTop`]: 'Bolzenloch, von oben',
    [`part.${kind}.socket.boltBottom`]: 'Bolzenloch, von unten',
    [`part.${kind}.socket.bladeRoot`]: 'In der Gabel',
    [`part.${kind}.socket.bearings`]: 'Lager in der Hülse',
  };
}

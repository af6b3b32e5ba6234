import { likenessOf } from '../../../src/bench/arrivals';
import { createBenchDesk } from '../../../src/bench/desk';
import { readNumberList } from '../../../src/bench/numberList';
import { faultText } from '../../../src/bench/readings/faultText';
import { recordOf } from '../../../src/bench/record';
import { gridFromPaste, rowsOfGrid } from '../../../src/bench/typedRows';
import { parseDrag } from '../../../src/panels/conditions/dragText';
import { takePolar } from '../../../src/panels/conditions/polarDesk';
import { takeSection } from '../../../src/panels/profile/sectionDesk';
import { EMPTY_DESIGN } from '../../../src/state/store';
import { parseQuantity } from '../../../src/state/typed/parseQuantity';
import { anyText, type Door, designFlaw, hasNonNumber, type Opened, refused, taken } from './door';

const NO_NOTES = { read: () => null, write: () => true };

/** Offers readings to a bench and takes them; what is taken must have a place in a design file. */
function takeReadings(source: Uint8Array | string): Opened {
  const desk = createBenchDesk({ reader: null, notes: NO_NOTES, newId: () => 'run' });
  desk.offer({ name: 'readings', source });
  const { offered } = desk.store.getState();
  if (offered?.kind === 'refused') return refused(faultText(offered.fault));
  if (offered?.kind !== 'ready') return refused('');
  const { derived } = offered.preview;
  if (!derived.ok) return refused(derived.error.map(faultText).join('\n'));
  if (derived.value.readings.some(isInfinite)) return taken('a reading is infinite');
  for (const fault of derived.value.refused.slice(0, 20)) {
    if (faultText(fault) === '') return taken('a row is refused without a word');
  }
  const fault = desk.take();
  if (fault) return refused(fault);
  const bench = recordOf(desk.store.getState());
  return taken(bench ? designFlaw({ ...EMPTY_DESIGN, bench }) : 'nothing is kept of it');
}

/** NaN stands for a reading that is not there. */
function isInfinite(value: unknown): boolean {
  return Object.values(value as object).some((one) => Math.abs(one) === Number.POSITIVE_INFINITY);
}

/** Doors behind which a table is read. */
export const TABLE_DOORS: readonly Door[] = [
  {
    name: 'readings file',
    entries: ['src/bench/arrivals.ts', 'src/bench/rooms/ReadingsRoom.tsx'],
    form: 'text',
    good: ['drag at rest', 'readings', 'readings with semicolons', 'readings parted by blanks'],
    async open(bytes) {
      const likeness = await likenessOf(new Blob([bytes as BlobPart]));
      if (!(likeness >= 0 && likeness <= 1)) return taken(`its likeness is ${likeness}`);
      return takeReadings(bytes);
    },
  },
  {
    name: 'pasted readings',
    entries: ['src/bench/rooms/readings/PasteBox.tsx'],
    form: 'text',
    good: ['readings', 'readings with tabs'],
    open: (bytes) => takeReadings(anyText(bytes)),
  },
  {
    name: 'cells pasted into the grid',
    entries: ['src/bench/rooms/readings/GridRows.tsx'],
    form: 'text',
    good: ['cells'],
    open(bytes) {
      const read = rowsOfGrid(gridFromPaste(anyText(bytes)), 'N');
      if (!read.ok) return refused(read.error.map(({ field, why }) => `${field}: ${why}`).join());
      return taken(hasNonNumber(read.value) ? 'a reading is no number' : null);
    },
  },
  {
    name: 'table of a section',
    entries: ['src/panels/conditions/PolarFileRow.tsx', 'src/panels/conditions/polarDesk.ts'],
    form: 'text',
    good: ['polar', 'polar with Reynolds numbers'],
    open(bytes, session) {
      const words = takePolar(session, 'section.csv', anyText(bytes));
      if (words !== null) return refused(words);
      return taken(designFlaw(session.store.getState().design));
    },
  },
  {
    name: 'outline of a section',
    entries: ['src/panels/profile/SectionFile.tsx'],
    form: 'text',
    good: ['outline', 'outline side by side'],
    open(bytes, session) {
      const { design } = session.store.getState();
      const blade = design.parts.find(({ kind }) => kind === 'blade');
      const read = takeSection(session, blade?.id ?? '', 'outline.dat', anyText(bytes));
      return read.ok ? taken(designFlaw(session.store.getState().design)) : refused(read.error);
    },
  },
  {
    name: 'table of drag',
    entries: ['src/panels/conditions/DragTable.tsx'],
    form: 'text',
    good: ['drag'],
    open(bytes) {
      const read = parseDrag(anyText(bytes));
      if (!read.ok) return refused(read.error);
      const friction = read.value.length > 0 ? { drag: read.value } : {};
      return taken(designFlaw({ ...EMPTY_DESIGN, friction }));
    },
  },
  {
    name: 'list of numbers',
    entries: [],
    form: 'text',
    good: ['list of numbers'],
    open(bytes) {
      const read = readNumberList(anyText(bytes), { min: -90, max: 90, most: 60 });
      if (!read.ok) return refused(read.error.kind);
      return taken(hasNonNumber(read.value) ? 'one of them is no number' : null);
    },
  },
  {
    name: 'typed number',
    entries: [],
    form: 'text',
    good: ['typed number', 'typed sum'],
    open(bytes) {
      const read = parseQuantity(anyText(bytes), 'mm', 'mm');
      if (!read.ok) return refused(read.error.code);
      return taken(Number.isFinite(read.value) ? null : 'it is no number');
    },
  },
];

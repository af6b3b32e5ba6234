import { useState } from 'react';
import type { Part } from '../../design/design';
import { recastPart } from '../../design/recast';
import { materialsOf } from '../../design/resolve';
import { type BodyChoice, bodyPart, bodyVolume } from '../../meshes/bodyPart';
import { FILE_UNITS, type FileUnit, type MeshImport } from '../../meshes/types';
import { t } from '../../messages';
import { findMaterial, MATERIALS } from '../../parts/materials';
import { tellRefusal } from '../../state/editing';
import { displayMass, show, significant } from '../../state/quantities';
import { weighedGrams } from '../../state/typed/weighedGrams';
import { ChoiceRow } from '../../ui/ChoiceRow';
import { Press } from '../../ui/Press';
import { useAppState, useSession } from '../../ui/session';
import { MassRow, NameRow } from './ChoiceRows';
import type { MeshDesk } from './meshDesk';
import { LONGEST_BODY_MM, reportLines, sizeInWords, unitName, unitWarning } from './meshReportText';
import { ReportList } from './ReportList';

/** Unit, material or weighing, name and role; then it is put in. */
export function MeshChoices(props: {
  readonly desk: MeshDesk;
  readonly read: MeshImport;
  readonly role: BodyRole;
}) {
  const { desk, read } = props;
  const { report } = read;
  const own = materialsOf(useSession().store.getState().design);
  const units = useAppState((state) => state.settings.units);
  const [name, setName] = useState(read.name);
  const [unit, setUnit] = useState<FileUnit>(report.unit.unit);
  const [material, setMaterial] = useState('nylon');
  const [weighed, setWeighed] = useState('');
  const [role, setRole] = useState<BodyRole>(props.role);
  const [accepted, setAccepted] = useState(report.verdict !== 'crossing');
  const putIn = usePutIn(desk, read);
  const grams = weighedGrams(weighed, units);
  const kilograms = (bodyVolume(read, unit) ?? 0) * (findMaterial(material, own)?.densityKgM3 ?? 0);
  const keepsOut = role === 'keepOut';
  const warning = unitWarning(report, unit);
  const isLong = (lengthMm(read, unit) ?? 0) > LONGEST_BODY_MM;
  const hinder = (isLong && 'Long') || (!grams.ok && 'Mass') || (!accepted && 'Crossing') || null;

  function put(place: boolean): void {
    if (grams.ok) putIn({ name, unit, role, material, grams: grams.value }, place);
  }

  return (
    <form
      className="import-form"
      onSubmit={(event) => {
        event.preventDefault();
        if (hinder === null) put(false);
      }}
    >
      <ReportList lines={reportLines(report)} />
      <NameRow value={name} onChange={setName} />
      <ChoiceRow
        label={t('import.unit')}
        value={unit}
        options={FILE_UNITS.map((value) => ({ value, text: unitText(read, value) }))}
        testId="import-unit"
        onChoose={setUnit}
      />
      {warning && (
        <p className="import-warning" role="alert" data-testid="import-unit-warning">
          {warning}
        </p>
      )}
      {!keepsOut && (
        <ChoiceRow
          label={t('import.material')}
          value={material}
          options={[...own, ...MATERIALS].map((one) => ({
            value: one.id,
            text: t('import.density', { name: one.name, density: one.densityKgM3 }),
          }))}
          testId="import-material"
          onChoose={setMaterial}
        />
      )}
      {!keepsOut && (
        <MassRow
          typed={weighed}
          fault={grams.ok ? null : grams.error}
          note={`${t('import.weighedHelp')} ${t('import.volume', {
            volume: significant((bodyVolume(read, unit) ?? 0) * CM3),
            mass: show(displayMass(kilograms, units)),
          })}`}
          onChange={setWeighed}
        />
      )}
      <ChoiceRow
        label={t('import.role')}
        value={role}
        options={ROLES.map((value) => ({ value, text: t(`import.role.${value}`) }))}
        testId="import-role"
        onChoose={setRole}
      />
      {report.verdict === 'crossing' && (
        <label className="import-accept">
          <input
            type="checkbox"
            checked={accepted}
            onChange={(event) => setAccepted(event.target.checked)}
          />
          {t('import.accept')}
        </label>
      )}
      <Ways
        why={hinder && t(`import.why${hinder}`)}
        onCancel={desk.next}
        onPlace={keepsOut ? null : () => put(true)}
      />
    </form>
  );
}

function Ways(props: {
  /** What hinders it from being put in. */
  readonly why: string | null;
  readonly onCancel: () => void;
  /** Null: what stands still is not placed by holes. */
  readonly onPlace: (() => void) | null;
}) {
  const off = { off: props.why !== null, why: props.why ?? undefined };
  return (
    <div className="import-tools">
      <button type="button" className="ui-button" onClick={props.onCancel}>
        {t('import.cancel')}
      </button>
      {props.onPlace && (
        <Press {...off} testId="import-place" onPress={props.onPlace}>
          {t('import.putAndPlace')}
        </Press>
      )}
      <Press {...off} main submits testId="import-put">
        {t('import.put')}
      </Press>
    </div>
  );
}

interface Chosen extends Omit<BodyChoice, 'role'> {
  readonly role: BodyRole;
  readonly name: string;
  readonly material: string;
  readonly grams: number | undefined;
}

/** Puts the body into the design as it was chosen, and goes on: to picking its holes for `place`, else to its row. */
function usePutIn(desk: MeshDesk, read: MeshImport) {
  const session = useSession();
  const { actions } = session;
  return ({ name, unit, role, material, grams }: Chosen, place: boolean): void => {
    const body = bodyPart(read, { unit, role: role === 'keepOut' ? 'part' : role });
    if (!body) return;
    const made = {
      id: '',
      name: name.trim() === '' ? read.name : name,
      ...body,
      material,
      ...(grams === undefined ? {} : { measured: { massGrams: grams } }),
      pose: { positionMm: [0, 0, 0], rotationDeg: [0, 0, 0] },
    } as unknown as Part;
    const { rotor } = session.store.getState().design;
    const part = (role === 'keepOut' && recastPart(made, rotor)) || made;
    const outcome = actions.pastePart(part);
    tellRefusal(session, outcome, null);
    if (!outcome.ok) return;
    desk.next();
    if (place && role !== 'keepOut') {
      // Its panel takes the focus.
      actions.picking.begin(outcome.value);
      return;
    }
    const taken = role === 'keepOut' ? 'import.takenKeepOut' : 'import.taken';
    actions.notify({ tone: 'plain', text: t(taken, { name: part.name }) });
    requestAnimationFrame(() => focusRow(outcome.value));
  };
}

/** The row of a part that was put in, unless another file's dialog stands open. */
function focusRow(id: string): void {
  if (document.querySelector('dialog[open]')) return;
  document.querySelector<HTMLElement>(`[role="option"][data-part="${CSS.escape(id)}"]`)?.focus();
}

type BodyRole = BodyChoice['role'] | 'keepOut';
const ROLES = ['part', 'grip', 'keepOut'] as const satisfies readonly BodyRole[];

/** Cubic centimetres in a cubic metre. */
const CM3 = 1e6;

function unitText(read: MeshImport, unit: FileUnit): string {
  const size = sizeInWords(lengthMm(read, unit) ?? Number.NaN);
  return t('import.unitSize', { unit: unitName(unit), size });
}

function lengthMm({ report }: MeshImport, unit: FileUnit): number | undefined {
  return report.unit.readings.find((one) => one.unit === unit)?.sizeMm;
}

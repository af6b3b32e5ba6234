import { useId, useState } from 'react';
import type { Part } from '../../design/design';
import { MEASURED_LIMITS } from '../../design/measured';
import { materialsOf } from '../../design/resolve';
import { gramsFromKilograms } from '../../engine/units';
import { bodyPart, bodyVolume } from '../../meshes/bodyPart';
import { FILE_UNITS, type FileUnit, type MeshImport } from '../../meshes/types';
import { t } from '../../messages';
import { findMaterial, MATERIALS } from '../../parts/materials';
import { tellRefusal } from '../../state/editing';
import { significant } from '../../state/quantities';
import { Dialog } from '../../ui/Dialog';
import { useSession } from '../../ui/session';
import type { MeshDesk, MeshJob } from './meshDesk';
import {
  LONGEST_BODY_MM,
  meshFaultText,
  type ReportLine,
  reportLines,
  sizeInWords,
  unitName,
  unitWarning,
} from './meshReportText';
import './import.css';

/** A file on its way in: how far it is, what was found, and what it shall be in the design. */
export function MeshDialog(props: { readonly desk: MeshDesk; readonly job: MeshJob }) {
  const { desk, job } = props;
  const { outcome } = job;
  return (
    <Dialog open title={t('import.title', { file: job.file })} onClose={desk.next}>
      <div className="import" data-testid="import-dialog">
        {job.waiting > 0 && <p>{t('import.waiting', { count: job.waiting })}</p>}
        {!outcome && <Reading desk={desk} job={job} />}
        {outcome && !outcome.ok && (
          <Refused desk={desk} lines={[{ tone: 'fault', text: meshFaultText(outcome.error) }]} />
        )}
        {outcome?.ok && !outcome.value.report.weighable && (
          <Refused desk={desk} lines={reportLines(outcome.value.report)} />
        )}
        {outcome?.ok && outcome.value.report.weighable && (
          <Choices key={job.file} desk={desk} read={outcome.value} />
        )}
      </div>
    </Dialog>
  );
}

function Reading(props: { readonly desk: MeshDesk; readonly job: MeshJob }) {
  const { step, share } = props.job.progress;
  return (
    <>
      <p role="status">{t(`import.step.${step}`)}</p>
      <progress className="import-progress" aria-label={t(`import.step.${step}`)} value={share} />
      <div className="import-tools">
        <button type="button" className="ui-button" onClick={props.desk.next}>
          {t('import.cancel')}
        </button>
      </div>
    </>
  );
}

function Refused(props: { readonly desk: MeshDesk; readonly lines: readonly ReportLine[] }) {
  return (
    <>
      <Lines lines={props.lines} />
      <p>{t('import.refused')}</p>
      <div className="import-tools">
        <button type="button" className="ui-button" onClick={props.desk.next}>
          {t('import.close')}
        </button>
      </div>
    </>
  );
}

function Lines(props: { readonly lines: readonly ReportLine[] }) {
  return (
    <ul className="import-lines" data-testid="import-report">
      {props.lines.map(({ tone, text }) => (
        <li key={text} data-tone={tone}>
          {text}
        </li>
      ))}
    </ul>
  );
}

type Role = 'part' | 'grip';

/** Unit, material or weighing, name and role; then it is put in. */
function Choices(props: { readonly desk: MeshDesk; readonly read: MeshImport }) {
  const { desk, read } = props;
  const { report } = read;
  const session = useSession();
  const { actions, store } = session;
  const own = materialsOf(store.getState().design);
  const ids = useId();
  const [name, setName] = useState(read.name);
  const [unit, setUnit] = useState<FileUnit>(report.unit.unit);
  const [material, setMaterial] = useState('nylon');
  const [weighed, setWeighed] = useState('');
  const [role, setRole] = useState<Role>('part');
  const [accepted, setAccepted] = useState(report.verdict !== 'crossing');
  const grams = weighed.trim() === '' ? null : Number(weighed.replace(',', '.'));
  const { min, max } = MEASURED_LIMITS.massGrams;
  const weighedSound = grams === null || (grams >= min && grams <= max);
  const volume = bodyVolume(read, unit) ?? 0;
  const density = findMaterial(material, own)?.densityKgM3 ?? 0;
  const warning = unitWarning(report, unit);
  const length = report.unit.readings.find((one) => one.unit === unit)?.sizeMm ?? 0;
  const ready = weighedSound && accepted && length <= LONGEST_BODY_MM;

  function put(place: boolean): void {
    const body = bodyPart(read, { unit, role });
    if (!body) return;
    const part = {
      id: '',
      name: name.trim() === '' ? read.name : name,
      ...body,
      material,
      ...(grams === null ? {} : { measured: { massGrams: grams } }),
      pose: { positionMm: [0, 0, 0], rotationDeg: [0, 0, 0] },
    } as unknown as Part;
    const outcome = actions.pastePart(part);
    tellRefusal(session, outcome, null);
    if (!outcome.ok) return;
    desk.next();
    if (place) actions.picking.begin(outcome.value);
    else actions.notify({ tone: 'plain', text: t('import.taken', { name: part.name }) });
  }

  return (
    <form
      className="import-form"
      onSubmit={(event) => {
        event.preventDefault();
        put(false);
      }}
    >
      <Lines lines={reportLines(report)} />
      <label htmlFor={`${ids}-name`}>{t('import.name')}</label>
      <input
        id={`${ids}-name`}
        className="import-input"
        maxLength={200}
        value={name}
        onChange={(event) => setName(event.target.value)}
      />
      <label htmlFor={`${ids}-unit`}>{t('import.unit')}</label>
      <select
        id={`${ids}-unit`}
        className="ui-select"
        value={unit}
        data-testid="import-unit"
        onChange={(event) => setUnit(event.target.value as FileUnit)}
      >
        {FILE_UNITS.map((one) => (
          <option key={one} value={one}>
            {t('import.unitSize', { unit: unitName(one), size: sizeOf(read, one) })}
          </option>
        ))}
      </select>
      {warning && (
        <p className="import-warning" role="alert" data-testid="import-unit-warning">
          {warning}
        </p>
      )}
      <label htmlFor={`${ids}-material`}>{t('import.material')}</label>
      <select
        id={`${ids}-material`}
        className="ui-select"
        value={material}
        data-testid="import-material"
        onChange={(event) => setMaterial(event.target.value)}
      >
        {[...own, ...MATERIALS].map((one) => (
          <option key={one.id} value={one.id}>
            {t('import.density', { name: one.name, density: one.densityKgM3 })}
          </option>
        ))}
      </select>
      <label htmlFor={`${ids}-mass`}>{t('import.weighed')}</label>
      <input
        id={`${ids}-mass`}
        className="import-input"
        inputMode="decimal"
        value={weighed}
        aria-invalid={!weighedSound}
        aria-describedby={`${ids}-mass-help`}
        data-testid="import-mass"
        onChange={(event) => setWeighed(event.target.value)}
      />
      <p
        className="import-note"
        id={`${ids}-mass-help`}
        data-tone={weighedSound ? 'plain' : 'fault'}
      >
        {weighedSound
          ? `${t('import.weighedHelp')} ${volumeText(volume, density)}`
          : t('import.weighedFault', { min, max })}
      </p>
      <label htmlFor={`${ids}-role`}>{t('import.role')}</label>
      <select
        id={`${ids}-role`}
        className="ui-select"
        value={role}
        onChange={(event) => setRole(event.target.value as Role)}
      >
        <option value="part">{t('import.role.part')}</option>
        <option value="grip">{t('import.role.grip')}</option>
      </select>
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
      <div className="import-tools">
        <button type="button" className="ui-button" onClick={desk.next}>
          {t('import.cancel')}
        </button>
        <button
          type="button"
          className="ui-button"
          disabled={!ready}
          data-testid="import-place"
          onClick={() => put(true)}
        >
          {t('import.putAndPlace')}
        </button>
        <button
          type="submit"
          className="ui-button ui-button-main"
          disabled={!ready}
          data-testid="import-put"
        >
          {t('import.put')}
        </button>
      </div>
    </form>
  );
}

function sizeOf({ report }: MeshImport, unit: FileUnit): string {
  return sizeInWords(report.unit.readings.find((one) => one.unit === unit)?.sizeMm ?? Number.NaN);
}

/** Cubic centimetres in a cubic metre. */
const CM3 = 1e6;

function volumeText(volume: number, density: number): string {
  return t('import.volume', {
    volume: significant(volume * CM3),
    mass: significant(gramsFromKilograms(volume * density)),
  });
}

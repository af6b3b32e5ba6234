import { useState } from 'react';
import { Press } from '../../ui/Press';
import { useSession } from '../../ui/session';
import { type DrawingChoice, useDrawingChoice } from './choice';
import { formatText } from './formatText';
import { FORMATS } from './paper';
import { t } from './roomText';
import { SheetDesk } from './SheetDesk';
import { SheetPrint } from './SheetPrint';
import { DRAWING_FILES, type DrawingFile, saveDrawing } from './saveDrawing';
import type { LengthUnit, Projection, Sheet } from './sheetTypes';
import { type DrawingDesk, useDrawing } from './useSheet';
import { WeighedBox } from './WeighedBox';
import './drawing.css';

/** The workshop drawing on its sheet, with what can be chosen beside it and the proof on the scale. */
export function DrawingRoom() {
  const [choice, change] = useDrawingChoice();
  const desk = useDrawing(choice);
  const { drawn } = desk;
  if (!drawn) return <p className="drawing-none">{t('drawing.noPart')}</p>;
  const { sheet, instead } = drawn;
  return (
    <section className="drawing-room" aria-label={t('drawing.title')} data-testid="drawing-room">
      <div className="drawing-side">
        <Buttons desk={desk} carries={choice.carries} />
        <PartChoice desk={desk} />
        <SheetChoices choice={choice} unit={drawn.unit} onChange={change} />
      </div>
      {sheet.ok ? (
        <SheetDesk sheet={sheet.value} />
      ) : (
        <TooBig instead={instead} onFormat={(format) => change({ format })} />
      )}
      <WeighedBox drawn={drawn} onStep={(step) => change({ step })} />
      {sheet.ok && <SheetPrint sheet={sheet.value} />}
    </section>
  );
}

/** Why there is no drawing on the chosen sheet, and on which there would be one. */
function TooBig(props: {
  readonly instead: Sheet | null;
  readonly onFormat: (format: string) => void;
}) {
  const { instead } = props;
  return (
    <div className="drawing-desk">
      <div className="drawing-no-room" role="status" data-testid="drawing-too-big">
        <p>{t(instead ? 'drawing.tooBigHere' : 'drawing.tooBigAll')}</p>
        {instead && (
          <button
            type="button"
            className="ui-button"
            onClick={() => props.onFormat(instead.format.name)}
          >
            {t('drawing.takeSheet', {
              sheet: formatText(instead.format.name),
              scale: instead.scale.name,
            })}
          </button>
        )}
      </div>
    </div>
  );
}

function Buttons(props: { readonly desk: DrawingDesk; readonly carries: boolean }) {
  const { design, drawn } = props.desk;
  const [said, setSaid] = useState('');
  const [busy, setBusy] = useState(false);
  const sheet = drawn?.sheet.ok ? drawn.sheet.value : null;

  async function save(made: Sheet, file: DrawingFile): Promise<void> {
    setBusy(true);
    setSaid(t('drawing.saving'));
    setSaid(await saveDrawing(design, made, file, props.carries));
    setBusy(false);
  }

  return (
    <div>
      <div className="drawing-buttons">
        {DRAWING_FILES.map((file) => (
          <Press
            key={file}
            title={t(`drawing.${file}Help`)}
            off={busy || sheet === null}
            testId={`drawing-${file}`}
            onPress={() => sheet && void save(sheet, file)}
          >
            {t(`drawing.${file}`)}
          </Press>
        ))}
        <Press
          title={t('drawing.printHelp')}
          off={sheet === null}
          testId="drawing-print"
          onPress={() => globalThis.print()}
        >
          {t('drawing.print')}
        </Press>
      </div>
      <p className="drawing-said" role="status" data-testid="drawing-said">
        {said}
      </p>
    </div>
  );
}

/** Choosing a part here selects it on the whole page, as the rail does. */
function PartChoice(props: { readonly desk: DrawingDesk }) {
  const { parts, drawn, undrawn } = props.desk;
  const { actions } = useSession();
  return (
    <>
      <label className="drawing-part">
        <span className="ui-unseen">{t('drawing.part')}</span>
        <select
          className="ui-select"
          value={drawn?.part.id}
          data-testid="drawing-part"
          onChange={(event) => actions.select(event.target.value)}
        >
          {parts.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      {undrawn && (
        <p className="drawing-note" data-testid="drawing-undrawn">
          {t('drawing.undrawn', { part: undrawn.name })}
        </p>
      )}
    </>
  );
}

function SheetChoices(props: {
  readonly choice: DrawingChoice;
  readonly unit: LengthUnit;
  readonly onChange: (change: Partial<DrawingChoice>) => void;
}) {
  const { choice, unit, onChange } = props;
  const formats = FORMATS.map(({ name }) => [name, formatText(name)] as const);
  return (
    <>
      <Choice
        name="format"
        label={t('drawing.sheet')}
        value={choice.format}
        options={[['auto', t('drawing.auto')], ...formats]}
        onChange={(format) => onChange({ format })}
      />
      <Choice
        name="projection"
        label={t('drawing.projection')}
        value={choice.projection}
        options={[
          ['first', t('drawing.first')],
          ['third', t('drawing.third')],
        ]}
        onChange={(projection) => onChange({ projection: projection as Projection })}
      />
      <Choice
        name="unit"
        label={t('drawing.units')}
        value={unit}
        options={[
          ['mm', t('drawing.mm')],
          ['in', t('drawing.in')],
        ]}
        onChange={(value) => onChange({ unit: value as LengthUnit })}
      />
      <label className="drawing-check">
        <input
          type="checkbox"
          checked={choice.carries}
          data-testid="drawing-carries"
          onChange={(event) => onChange({ carries: event.target.checked })}
        />
        {t('drawing.carries')}
      </label>
    </>
  );
}

function Choice(props: {
  readonly name: string;
  readonly label: string;
  readonly value: string;
  readonly options: readonly (readonly [value: string, label: string])[];
  readonly onChange: (value: string) => void;
}) {
  return (
    <label className="drawing-label">
      {props.label}
      <select
        className="ui-select"
        value={props.value}
        data-testid={`drawing-${props.name}`}
        onChange={(event) => props.onChange(event.target.value)}
      >
        {props.options.map(([value, label]) => (
          <option key={value} value={value}>
            {label}
          </option>
        ))}
      </select>
    </label>
  );
}

import { useRef, useState } from 'react';
import { useAppState, useSession } from '../../ui/session';
import { offerFiles } from '../arrivals';
import { say } from '../say';
import { today } from '../today';
import './bench.css';
import { CalibrationBox } from './readings/CalibrationBox';
import { newDraft } from './readings/gridDraft';
import { PasteBox } from './readings/PasteBox';
import { RunDetails } from './readings/RunDetails';
import { RunsList } from './readings/RunsList';
import { TakePreview } from './readings/TakePreview';
import { TypedGrid } from './readings/TypedGrid';
import { useBench, useDesk } from './useDesk';

/** What is open beside the list of runs. */
type Open = 'run' | 'paste' | 'grid' | 'calibration';

/** Runs of the bench: files dropped or opened, tables pasted, rows typed; looked at before they are taken. */
export function ReadingsRoom() {
  const session = useSession();
  const desk = useDesk();
  const offered = useBench((state) => state.offered);
  const [open, setOpen] = useState<Open>('run');
  const unit = useAppState((state) => state.settings.units.force);
  const isTyping = useBench((state) => state.draft !== null);
  const picker = useRef<HTMLInputElement>(null);
  const shown = useBench(({ chosen, runs }) => {
    const named = runs.find(({ id }) => id === chosen)?.steps !== undefined;
    return `${chosen} ${named}`;
  });

  async function look(files: readonly File[]): Promise<void> {
    setOpen('run');
    await offerFiles(session, files);
  }
  function type(): void {
    const { draft, runs } = desk.store.getState();
    if (!draft) desk.set({ draft: newDraft(runs, unit, today()) });
    setOpen('grid');
  }

  return (
    <section
      className="bench-room bench-readings"
      aria-label={say('benchRoom.readings')}
      data-testid="bench-readings"
    >
      <div className="bench-side">
        <div className="bench-buttons">
          <button
            type="button"
            className="ui-button ui-button-main"
            onClick={() => picker.current?.click()}
          >
            {say('benchRoom.open')}
          </button>
          <button type="button" className="ui-button" onClick={() => setOpen('paste')}>
            {say('benchRoom.paste')}
          </button>
          <button type="button" className="ui-button" data-testid="bench-type" onClick={type}>
            {say(isTyping ? 'benchRoom.gridGoOn' : 'benchRoom.type')}
          </button>
          <input
            ref={picker}
            type="file"
            hidden
            multiple
            accept=".csv,.tsv,.txt,.dat,.log,text/*"
            data-testid="bench-file"
            onChange={(event) => {
              void look([...(event.target.files ?? [])]);
              event.target.value = '';
            }}
          />
        </div>
        <p className="lower-quiet">{say('benchRoom.dropHere')}</p>
        <RunsList onOpen={() => setOpen('run')} />
        <button
          type="button"
          className="ui-button"
          aria-pressed={open === 'calibration'}
          data-testid="bench-calibrate"
          onClick={() => setOpen('calibration')}
        >
          {say('benchRoom.calibrate')}
        </button>
      </div>
      <div
        className="bench-main lower-scroll"
        // What comes next begins at its top.
        key={`${open} ${offered?.name} ${shown}`}
        tabIndex={0}
        role="region"
        aria-label={say('benchRoom.details')}
      >
        {offered ? (
          <TakePreview offered={offered} onTaken={() => setOpen('run')} />
        ) : (
          <Detail open={open} onDone={() => setOpen('run')} onGrid={() => setOpen('grid')} />
        )}
      </div>
    </section>
  );
}

function Detail(props: {
  readonly open: Open;
  readonly onDone: () => void;
  readonly onGrid: () => void;
}) {
  const isTyping = useBench((state) => state.draft !== null);
  if (props.open === 'paste') return <PasteBox onDone={props.onDone} />;
  if (props.open === 'grid' && isTyping) return <TypedGrid onDone={props.onDone} />;
  if (props.open === 'calibration') return <CalibrationBox />;
  return <RunDetails onGrid={props.onGrid} />;
}

import { type DragEvent, useRef, useState } from 'react';
import { say } from '../say';
import './bench.css';
import { CalibrationBox } from './readings/CalibrationBox';
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
  const desk = useDesk();
  const offered = useBench((state) => state.offered);
  const [open, setOpen] = useState<Open>('run');
  const [over, setOver] = useState(false);
  const picker = useRef<HTMLInputElement>(null);

  async function look(files: readonly File[]): Promise<void> {
    setOpen('run');
    const sources = files.map(async (file) => ({
      name: file.name.replace(/\.[^.]*$/, ''),
      source: new Uint8Array(await file.arrayBuffer()),
    }));
    desk.offer(...(await Promise.all(sources)));
  }
  function drop(event: DragEvent): void {
    event.preventDefault();
    event.stopPropagation();
    setOver(false);
    void look([...event.dataTransfer.files]);
  }

  return (
    <section
      className="bench-room bench-readings"
      aria-label={say('benchRoom.readings')}
      data-testid="bench-readings"
      data-over={over || undefined}
      onDragOver={(event) => {
        event.preventDefault();
        event.stopPropagation();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
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
          <button type="button" className="ui-button" onClick={() => setOpen('grid')}>
            {say('benchRoom.type')}
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
        tabIndex={0}
        role="region"
        aria-label={say('benchRoom.details')}
      >
        {offered ? (
          <TakePreview offered={offered} onTaken={() => setOpen('run')} />
        ) : (
          <Detail open={open} onDone={() => setOpen('run')} />
        )}
      </div>
    </section>
  );
}

function Detail(props: { readonly open: Open; readonly onDone: () => void }) {
  if (props.open === 'paste') return <PasteBox onDone={props.onDone} />;
  if (props.open === 'grid') return <TypedGrid onDone={props.onDone} />;
  if (props.open === 'calibration') return <CalibrationBox />;
  return <RunDetails />;
}

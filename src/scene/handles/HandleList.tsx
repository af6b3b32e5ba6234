import { type KeyboardEvent, useId, useRef, useState } from 'react';
import { t } from '../../messages';
import type { Hold } from '../../state/gesture';
import type { Session } from '../../state/session';
import { setText } from '../../ui/drawn/svg';
import { useAppState, useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';
import { useStageKit } from '../stageKit';
import { snapTo } from './dragMaths';
import type { HandleSpec } from './handleSpec';
import { handleSpecs } from './handleSpecs';
import { moveValue, valueText } from './moveValue';

/** The list starts open where it leaves the picture room: fingers need tall rows. */
const ROOMY = '(min-width: 720px) and (pointer: fine)';
/** Specs for the list need no place: it reads names, limits and values. */
const NO_PLACE = { stationMm: 0, radiusMm: 0 };

/**
 * The handles once more as sliders for keyboard and single taps: arrows step by the snap (Shift 1, Alt 0.01), Page
 * keys ten steps, Home and End the limits; a button on either side steps too. A held key is one undo step.
 */
export function HandleList() {
  const session = useSession();
  const keys = useHandleKeys();
  const owner = useAppState(
    ({ design, selection }) => design.parts.find((part) => part.id === selection)?.name ?? null,
  );
  const picking = useAppState((state) => state.picking !== null);
  const [open, setOpen] = useState(() => matchMedia(ROOMY).matches);
  const list = useId();
  const status = useRef<HTMLParagraphElement>(null);

  function say(reason: string | null): void {
    if (status.current) status.current.textContent = reason ?? '';
  }

  // The panel of the picks stands in its place.
  if (picking) return null;
  const wanted = keys.split('\n');
  const specs = listed(session).filter(({ key }) => wanted.includes(key));
  return (
    <div className="stage-handles" data-stage-control role="group" aria-label={t('stage.handles')}>
      <button
        type="button"
        className="stage-handles-title"
        aria-expanded={open}
        aria-controls={list}
        onClick={() => setOpen(!open)}
      >
        <span>{owner === null ? t('stage.handles') : t('stage.handlesOf', { part: owner })}</span>
      </button>
      <ul id={list} hidden={!open}>
        {specs.map((spec) => (
          <HandleRow key={spec.key} name={spec.key} label={spec.label} say={say} />
        ))}
      </ul>
      <p className="stage-handles-status" role="status" ref={status} />
    </div>
  );
}

/** Specs for the list, made once for each state of the page however many rows ask. */
function listed(session: Session): readonly HandleSpec[] {
  const state = session.store.getState();
  if (latest?.state !== state) latest = { state, specs: handleSpecs(session, NO_PLACE) };
  return latest.specs;
}

let latest: { readonly state: unknown; readonly specs: readonly HandleSpec[] } | null = null;

/**
 * Which handles there are, one a line. The list is rendered anew when others come into play, not when a value changes;
 * while something is dragged none come.
 */
function useHandleKeys(): string {
  const session = useSession();
  const held = useRef({ selection: '' as string | null, picking: false, keys: '' });
  return useAppState(({ selection, picking, gesture }) => {
    const { current } = held;
    const same = current.selection === selection && current.picking === (picking !== null);
    if (gesture && same) return current.keys;
    const keys = listed(session)
      .map(({ key }) => key)
      .join('\n');
    held.current = { selection, picking: picking !== null, keys };
    return keys;
  });
}

interface RowProps {
  readonly name: string;
  readonly label: string;
  say(reason: string | null): void;
}

function HandleRow({ name, label, say }: RowProps) {
  const session = useSession();
  const kit = useStageKit();
  const slider = useRef<HTMLDivElement>(null);
  const value = useRef<HTMLSpanElement>(null);
  const hold = useRef<Hold | null>(null);
  const written = useRef(Number.NaN);

  function spec(): HandleSpec | undefined {
    return listed(session).find(({ key }) => key === name);
  }

  useLive((_, changes) => {
    const now = spec();
    if (!now || !slider.current || !value.current) return;
    if (now.value === written.current && !changes.settings) return;
    written.current = now.value;
    const text = valueText(session, now, now.value);
    setText(value.current, text);
    slider.current.setAttribute('aria-valuenow', String(now.value));
    for (const [attribute, limit] of [
      ['aria-valuemin', String(now.min)],
      ['aria-valuemax', String(now.max)],
    ]) {
      if (slider.current.getAttribute(attribute) !== limit) {
        slider.current.setAttribute(attribute, limit);
      }
    }
    slider.current.setAttribute('aria-valuetext', text);
  }, 'lists');

  /** Moves to `wanted`; one call is one undo step unless a key is being held. */
  function go(now: HandleSpec, wanted: number, step: number): void {
    const { reason } = moveValue(session, now, now.value, wanted, step);
    say(reason);
  }

  function press(event: KeyboardEvent): void {
    const now = spec();
    const move = now ? keyMove(event, now) : null;
    if (event.key === 'Escape') {
      // It puts a step back; it does not let go of the part, and of this slider with it.
      hold.current?.cancel();
      event.stopPropagation();
      return;
    }
    if (!now || !move) return;
    event.preventDefault();
    // A pointer drag of a handle goes on undisturbed by keys.
    if (!hold.current?.alive && session.store.getState().gesture) return;
    if (!hold.current?.alive) hold.current = session.actions.gesture.begin();
    go(now, move.wanted, move.step);
  }

  function tap(way: 1 | -1): void {
    const now = spec();
    if (!now) return;
    const single = session.actions.gesture.begin();
    go(now, snapTo(now.value + way * now.steps.plain, now.steps.plain), now.steps.plain);
    single.end();
  }

  /** Ends only what this row's own keys began: a pointer drag has its own hold. */
  const finish = () => hold.current?.end();
  return (
    <li
      className={name === 'pitch/pitchDeg' ? 'stage-handle stage-handle-pitch' : 'stage-handle'}
      onPointerEnter={() => kit.heat(name)}
      onPointerLeave={() => kit.heat(null)}
    >
      <button
        type="button"
        tabIndex={-1}
        aria-label={t('stage.handle.less', { name: label })}
        onClick={() => tap(-1)}
      >
        {'\u2212'}
      </button>
      <div
        ref={slider}
        role="slider"
        tabIndex={0}
        data-handle={name}
        aria-label={label}
        aria-valuenow={0}
        onKeyDown={press}
        onKeyUp={finish}
        onFocus={() => kit.heat(name)}
        onBlur={() => {
          kit.heat(null);
          finish();
        }}
      >
        <span className="stage-handle-name">{label}</span>
        <span className="stage-handle-value" ref={value} />
      </div>
      <button
        type="button"
        tabIndex={-1}
        aria-label={t('stage.handle.more', { name: label })}
        onClick={() => tap(1)}
      >
        {'+'}
      </button>
    </li>
  );
}

/** Where a key takes the value, and by which step; null for keys that are not the slider's. */
function keyMove(
  event: KeyboardEvent,
  spec: HandleSpec,
): { readonly wanted: number; readonly step: number } | null {
  const { plain, shift, alt, page } = spec.steps;
  if (event.ctrlKey || event.metaKey) return null;
  const step = event.altKey ? alt : event.shiftKey ? shift : plain;
  const by = (amount: number) => ({ wanted: snapTo(spec.value + amount, alt), step });
  switch (event.key) {
    case 'ArrowUp':
    case 'ArrowRight':
      return by(step);
    case 'ArrowDown':
    case 'ArrowLeft':
      return by(-step);
    case 'PageUp':
      return by(page);
    case 'PageDown':
      return by(-page);
    case 'Home':
      return { wanted: spec.min, step: plain };
    case 'End':
      return { wanted: spec.max, step: plain };
    default:
      return null;
  }
}

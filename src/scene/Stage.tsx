import { type KeyboardEvent, useCallback, useEffect, useId, useRef, useState } from 'react';
import { t } from '../messages';
import { STAGE_KEYS } from '../ui/stageKeys';
import { AxisGizmo } from './AxisGizmo';
import type { Rectangle } from './drawing/labels';
import { HandleList } from './handles/HandleList';
import { Readout } from './handles/readout';
import { PickPanel } from './picking/PickPanel';
import { ScaleKey } from './ScaleKey';
import { hasWebGl, StageBoundary, StageNote } from './StageBoundary';
import { StageCanvas } from './StageCanvas';
import { LayerToggles, ViewButtons } from './StageToolbar';
import './stage.css';
import { StageContext, StageKit } from './stageKit';
import { ViewControl } from './view/viewControl';

/**
 * The stage: the head in 3D at true scale, with its layers, handles and views. Fills its parent. What happens on every
 * pointer event happens in the canvas's own objects, not here.
 */
export function Stage() {
  const [kit] = useState(() => new StageKit());
  const [view] = useState(() => new ViewControl(kit));
  const heading = useId();
  useEffect(
    () => () => {
      kit.crowds.dispose();
      kit.lines.dispose();
      kit.finishes.dispose();
    },
    [kit],
  );
  return (
    <StageContext value={kit}>
      <section className="stage" aria-labelledby={heading}>
        <header className="stage-header">
          <h2 id={heading}>{t('stage.title')}</h2>
          <LayerToggles />
        </header>
        <StageBoundary>
          {hasWebGl() ? (
            <StageView kit={kit} view={view} />
          ) : (
            <StageNote text={t('stage.noWebGl')} />
          )}
        </StageBoundary>
      </section>
    </StageContext>
  );
}

function StageView({ kit, view }: { readonly kit: StageKit; readonly view: ViewControl }) {
  const host = useRef<HTMLDivElement>(null);
  const frame = useRef<HTMLDivElement>(null);
  const overlay = useRef<HTMLDivElement>(null);
  const [readout] = useState(() => new Readout());
  const [lost, setLost] = useState(false);
  const onLost = useCallback((now: boolean) => setLost(now), []);

  useEffect(() => {
    const corners = [...(frame.current?.children ?? [])].filter(
      (child) => child !== host.current && !child.classList.contains('stage-note'),
    );
    let boxes: Rectangle[] = [];
    const observer = new ResizeObserver(() => {
      // The page is laid out here: asking costs nothing.
      kit.labels.letterSize = getComputedStyle(kit.labels.element).fontSize;
      const now = corners.map((corner) => boxWithin(corner, frame.current));
      // A number that is written anew makes its list a hair wider: nobody has to make room for that.
      if (now.length === boxes.length && now.every((box, i) => isNear(box, boxes[i]))) return;
      boxes = now;
      kit.labels.reserved = now;
      kit.eye?.invalidate();
    });
    for (const corner of corners) observer.observe(corner);
    if (host.current) observer.observe(host.current);
    return () => observer.disconnect();
  }, [kit]);

  useEffect(() => {
    const element = overlay.current;
    element?.append(kit.labels.element, readout.element);
    return () => {
      kit.labels.element.remove();
      readout.element.remove();
    };
  }, [kit, readout]);

  return (
    <div className="stage-view" ref={frame}>
      <div
        className="stage-canvas"
        ref={host}
        role="group"
        tabIndex={0}
        aria-label={t('stage.canvas')}
        onKeyDown={(event) => moveCamera(event, view)}
      >
        <StageCanvas host={host} view={view} readout={readout} onLost={onLost} />
        <div className="stage-overlay" ref={overlay} />
      </div>
      <ViewButtons view={view} />
      <HandleList />
      <PickPanel />
      <AxisGizmo />
      <ScaleKey view={view} />
      {lost ? <StageNote text={t('stage.lost')} /> : null}
    </div>
  );
}

function boxWithin(element: Element, frame: Element | null): Rectangle {
  const own = element.getBoundingClientRect();
  const { left, top } = frame?.getBoundingClientRect() ?? { left: 0, top: 0 };
  return {
    left: own.left - left,
    top: own.top - top,
    right: own.right - left,
    bottom: own.bottom - top,
  };
}

/** Pixels. */
const HAIR = 1.5;

function isNear(a: Rectangle, b: Rectangle): boolean {
  const sides = ['left', 'top', 'right', 'bottom'] as const;
  return sides.every((side) => Math.abs(a[side] - b[side]) < HAIR);
}

const TURN_DEG = { plain: 10, shift: 30 };
const ZOOM = 1.2;

/** Does what the table of the stage's keys says. */
function moveCamera(event: KeyboardEvent, view: ViewControl): void {
  if (event.target !== event.currentTarget || event.ctrlKey || event.metaKey || event.altKey)
    return;
  const { turn, zoom, whole } = STAGE_KEYS;
  if (isKeyOf(turn, event.key)) {
    const step = event.shiftKey ? TURN_DEG.shift : TURN_DEG.plain;
    const [about, up] = turn[event.key];
    view.turn(about * step, up * step);
  } else if (isKeyOf(zoom, event.key)) view.zoom(ZOOM ** zoom[event.key]);
  else if (isKeyOf(whole, event.key)) view.show('threeQuarter');
  else return;
  event.preventDefault();
}

function isKeyOf<T extends object>(keys: T, key: string): key is Extract<keyof T, string> {
  return Object.hasOwn(keys, key);
}

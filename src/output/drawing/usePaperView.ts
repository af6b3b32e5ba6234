import { type KeyboardEvent, type RefObject, useEffect, useMemo, useRef } from 'react';
import {
  moved,
  type PaperSize,
  type PaperView,
  viewBoxOf,
  wholeSheet,
  zoomedAt,
} from './paperView';

const WHEEL_STEP = 1.0015;
export const ZOOM_STEP = 1.4;
/** Share of what is seen that an arrow key moves by. */
const KEY_SHARE = 0.1;

export interface PaperHands {
  zoom(factor: number): void;
  whole(): void;
  onKeyDown(event: KeyboardEvent): void;
}

/**
 * Zoom and moves of the sheet in `svg` by wheel, drag, two fingers and keys. They write to the picture itself: nothing is
 * drawn anew by React. The view stays when the drawing changes, and is whole again on another format.
 */
export function usePaperView(
  svg: RefObject<SVGSVGElement | null>,
  { width, height }: PaperSize,
): PaperHands {
  const view = useRef<PaperView>({ x: 0, y: 0, zoom: 1 });
  const hands = useMemo(() => {
    const size = { width, height };
    function show(next: PaperView): void {
      view.current = next;
      svg.current?.setAttribute('viewBox', viewBoxOf(next, size));
      svg.current?.toggleAttribute('data-zoomed', next.zoom > 1);
    }
    return {
      size,
      show,
      zoom: (factor: number) =>
        show(zoomedAt(view.current, size, factor, [view.current.x, view.current.y])),
      whole: () => show(wholeSheet(size)),
    };
  }, [svg, width, height]);

  useEffect(() => {
    hands.whole();
    const element = svg.current;
    return element ? listen(element, view, hands.size, hands.show) : undefined;
  }, [svg, hands]);

  function onKeyDown(event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const step = (KEY_SHARE * Math.min(width, height)) / view.current.zoom;
    const moves: Readonly<Record<string, readonly [number, number]>> = {
      ArrowLeft: [-step, 0],
      ArrowRight: [step, 0],
      ArrowUp: [0, -step],
      ArrowDown: [0, step],
    };
    const move = moves[event.key];
    if (move) hands.show(moved(view.current, hands.size, ...move));
    else if (event.key === '+' || event.key === '=') hands.zoom(ZOOM_STEP);
    else if (event.key === '-') hands.zoom(1 / ZOOM_STEP);
    else if (event.key === '0') hands.whole();
    else return;
    event.preventDefault();
    event.stopPropagation();
  }

  return { zoom: hands.zoom, whole: hands.whole, onKeyDown };
}

/** Wheel and pointers; returns how to stop. */
function listen(
  svg: SVGSVGElement,
  view: { readonly current: PaperView },
  size: PaperSize,
  show: (view: PaperView) => void,
): () => void {
  const fingers = new Map<number, { readonly x: number; readonly y: number }>();
  const stop = new AbortController();
  const own = { signal: stop.signal };

  function zoomAt(x: number, y: number, factor: number): void {
    const matrix = svg.getScreenCTM();
    if (!matrix) return;
    const at = new DOMPoint(x, y).matrixTransform(matrix.inverse());
    show(zoomedAt(view.current, size, factor, [at.x, at.y]));
  }
  function onWheel(event: WheelEvent): void {
    // Nothing smaller than the whole sheet: the page may scroll.
    if (view.current.zoom === 1 && event.deltaY > 0) return;
    event.preventDefault();
    const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
    zoomAt(event.clientX, event.clientY, WHEEL_STEP ** (-event.deltaY * lines));
  }
  function onMove(event: PointerEvent): void {
    const before = fingers.get(event.pointerId);
    if (!before) return;
    const now = { x: event.clientX, y: event.clientY };
    const [other] = [...fingers].filter(([id]) => id !== event.pointerId).map(([, at]) => at);
    fingers.set(event.pointerId, now);
    if (other) {
      const [far, farBefore] = [distance(now, other), distance(before, other)];
      if (farBefore > 0) zoomAt((now.x + other.x) / 2, (now.y + other.y) / 2, far / farBefore);
      return;
    }
    const perMm = svg.getScreenCTM()?.a ?? 1;
    show(moved(view.current, size, (before.x - now.x) / perMm, (before.y - now.y) / perMm));
  }
  function onUp(event: PointerEvent): void {
    fingers.delete(event.pointerId);
  }

  svg.addEventListener('wheel', onWheel, { ...own, passive: false });
  svg.addEventListener(
    'pointerdown',
    (event) => {
      if (event.button !== 0) return;
      fingers.set(event.pointerId, { x: event.clientX, y: event.clientY });
      svg.setPointerCapture(event.pointerId);
    },
    own,
  );
  svg.addEventListener('pointermove', onMove, own);
  svg.addEventListener('pointerup', onUp, own);
  svg.addEventListener('pointercancel', onUp, own);
  return () => stop.abort();
}

function distance(a: { x: number; y: number }, b: { x: number; y: number }): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

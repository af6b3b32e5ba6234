import { useEffect, useRef } from 'react';
import { t } from '../messages';
import { displayForce, show } from '../state/quantities';
import { useSession } from '../ui/session';
import { mmPerPixel } from './handles/projection';
import { niceBelow } from './maths/niceScale';
import { type StageEye, useStageKit } from './stageKit';
import type { ViewControl } from './view/viewControl';

/** Longest bar, px. */
const BAR = 72;

/**
 * The corner's key to the pull arrows: one bar a scale, its length true at the middle of the picture. Written at every
 * drawn frame, because zooming changes it.
 */
export function ScaleKey({ view }: { readonly view: ViewControl }) {
  const kit = useStageKit();
  const { store } = useSession();
  const box = useRef<HTMLDivElement>(null);
  const bars = [useRef<HTMLSpanElement>(null), useRef<HTMLSpanElement>(null)] as const;
  const words = [useRef<HTMLSpanElement>(null), useRef<HTMLSpanElement>(null)] as const;
  const [turningBar, stillBar] = bars;
  const [turningWords, stillWords] = words;

  useEffect(() => {
    let drawn: readonly unknown[] = [];
    function draw(eye: StageEye, _width: number, height: number): void {
      const { visible, whole, stillMmPerN, turningMmPerN } = kit.pullScale;
      if (!box.current || !view.orbit) return;
      const hidden = !visible || !(stillMmPerN > 0);
      if (box.current.hidden !== hidden) box.current.hidden = hidden;
      if (hidden) return;
      const mm = mmPerPixel(eye.camera, view.orbit.target, height);
      const { units } = store.getState().settings;
      const now = [mm, stillMmPerN, turningMmPerN, whole, units];
      if (now.every((one, i) => one === drawn[i])) return;
      drawn = now;
      fill(turningBar.current, turningWords.current, turningMmPerN / mm, 'stage.key.turning');
      const pale = whole ? 'pulls.key.whole' : 'stage.key.still';
      fill(stillBar.current, stillWords.current, stillMmPerN / mm, pale);
    }
    function fill(
      bar: HTMLElement | null,
      text: HTMLElement | null,
      pixelsPerN: number,
      key: 'stage.key.turning' | 'stage.key.still' | 'pulls.key.whole',
    ): void {
      if (!bar || !text) return;
      const { units } = store.getState().settings;
      const { value: perN, unit } = displayForce(1, units);
      const size = niceBelow((BAR / pixelsPerN) * perN);
      bar.style.width = `${((size / perN) * pixelsPerN).toFixed(1)}px`;
      const line = t(key, { size: show({ value: size, unit }, 1) });
      if (text.textContent !== line) text.textContent = line;
    }
    kit.frameTasks.add(draw);
    return () => {
      kit.frameTasks.delete(draw);
    };
  }, [kit, store, view, turningBar, stillBar, turningWords, stillWords]);

  return (
    <div className="stage-key" ref={box} hidden>
      <p>
        <span className="stage-key-bar stage-key-turning" ref={turningBar} />
        <span ref={turningWords} />
      </p>
      <p>
        <span className="stage-key-bar stage-key-still" ref={stillBar} />
        <span ref={stillWords} />
      </p>
    </div>
  );
}

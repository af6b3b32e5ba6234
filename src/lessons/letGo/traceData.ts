import { degreesFromRadians, radians } from '../../engine/units';
import { t } from '../../messages';
import type { LetGoDesk } from '../../state/letGoTypes';
import type { PlotData } from '../../ui/drawn/plotLayout';

/** Pitch against time of the run under way or the last one, every place of its trace; null before there is one. */
export function traceData({ run }: Pick<LetGoDesk, 'run'>): PlotData | null {
  if (!run || run.trace.length < 2) return null;
  const { length, time, pitch } = run.trace;
  const inSeconds = time[length - 1] >= 1;
  return {
    x: Array.from({ length }, (_, i) => time[i] * (inSeconds ? 1 : 1000)),
    lines: [
      {
        name: t('chart.pitch'),
        look: 'total',
        values: Array.from({ length }, (_, i) => degreesFromRadians(radians(pitch[i]))),
      },
    ],
    xTitle: t('letGo.time', { unit: inSeconds ? 's' : 'ms' }),
    yTitle: t('letGo.pitchAxis'),
  };
}

import { degreesFromRadians } from '../../../engine/units';
import { signedDegrees } from '../../../state/words/pitchText';
import type { BenchRun } from '../../readings/benchSection';
import type { Reading } from '../../readings/types';
import { countedReadings } from '../../runReadings';
import { say } from '../../say';
import { useBench, useDesk } from '../useDesk';
import { SeriesPlot } from './SeriesPlot';
import { firstNaming } from './stepsDraft';

/** A log over time with the stretches that its readings rest on; nothing for a sheet filled by hand. */
export function OverTime(props: {
  readonly run: BenchRun;
  readonly readings: readonly Reading[];
  readonly canName: boolean;
}) {
  const { run, readings, canName } = props;
  const desk = useDesk();
  const step = useBench((state) => state.gaugeStepN);
  const { readings: counted, steady } = countedReadings(run);
  if (!steady || !counted.ok) return null;
  const marks = steady.stretches.map(({ from, to }, k) => {
    const { pitch } = counted.value[k];
    return { from, to, label: pitch === null ? '' : signedDegrees(degreesFromRadians(pitch)) };
  });
  return (
    <>
      <SeriesPlot name={run.name} readings={readings} marks={marks} />
      {canName && (
        <button
          type="button"
          className="ui-button"
          data-testid="bench-steps-again"
          onClick={() => desk.set({ naming: firstNaming(run, readings, step) })}
        >
          {say('benchRoom.steps.again')}
        </button>
      )}
    </>
  );
}

import { useMemo } from 'react';
import { useRestingDesign, useSession } from '../../ui/session';
import { analyseBench, type BenchAnalysis } from '../analysis';
import { calibrate } from '../calibrate';
import { useBench } from './useDesk';

/** The bench's runs against the design at rest; worked out anew when either changes. */
export function useAnalysis(): BenchAnalysis {
  const design = useRestingDesign();
  const { live } = useSession();
  const runs = useBench((state) => state.runs);
  const fit = useBench((state) => state.fit);
  const place = useBench((state) => state.place);
  const pullsAlong = useBench((state) => state.pullsAlong);
  const gaugeStepN = useBench((state) => state.gaugeStepN);
  const gaugeLimitN = useBench((state) => state.gaugeLimitN);
  const pairs = useBench((state) => state.pairs);
  const scaleUnit = useBench((state) => state.scaleUnit);
  const calibration = useBench((state) => state.calibration);
  return useMemo(() => {
    const scale = calibrate({ pairs, scaleUnit, calibration }, live.reading);
    const bench = { runs, fit, place, pullsAlong, gaugeStepN, gaugeLimitN };
    return analyseBench(design, bench, scale.ok ? scale.value : null);
  }, [
    design,
    live,
    runs,
    fit,
    place,
    pullsAlong,
    gaugeStepN,
    gaugeLimitN,
    pairs,
    scaleUnit,
    calibration,
  ]);
}

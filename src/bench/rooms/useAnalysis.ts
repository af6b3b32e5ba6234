import { useRestingDesign, useSession } from '../../ui/session';
import { type HeadAnalysis, headAnalysis } from '../headAnalysis';
import { useBench } from './useDesk';

/** The bench's runs against the design at rest; worked out anew when either changes. */
export function useAnalysis(): HeadAnalysis {
  const design = useRestingDesign();
  const { live } = useSession();
  const asked = {
    runs: useBench((state) => state.runs),
    fit: useBench((state) => state.fit),
    place: useBench((state) => state.place),
    pullsAlong: useBench((state) => state.pullsAlong),
    gaugeStepN: useBench((state) => state.gaugeStepN),
    gaugeLimitN: useBench((state) => state.gaugeLimitN),
    pairs: useBench((state) => state.pairs),
    scaleUnit: useBench((state) => state.scaleUnit),
    calibration: useBench((state) => state.calibration),
  };
  return headAnalysis(design, asked, live.reading);
}

import { useMemo } from 'react';
import { useRestingDesign } from '../../ui/session';
import { gaugePlace, PLAN_ARM_MM } from '../gaugePlace';
import { benchPlan } from '../plan';
import { useBench } from './useDesk';

/** The plan of the design at rest for the gauge as it is; with `everyRung` also those that the person does not make. */
export function usePlan(which?: 'everyRung'): ReturnType<typeof benchPlan> {
  const design = useRestingDesign();
  const place = useBench((state) => state.place);
  const pullsAlong = useBench((state) => state.pullsAlong);
  const step = useBench((state) => state.gaugeStepN);
  const limit = useBench((state) => state.gaugeLimitN);
  const typed = useBench((state) => state.plan);
  return useMemo(() => {
    const where = gaugePlace({ place, pullsAlong }, PLAN_ARM_MM);
    const { leftOut, ...rest } = typed;
    return benchPlan(design, {
      ...rest,
      ...(leftOut && which !== 'everyRung' ? { leftOut } : {}),
      ...(where && { place: where }),
      ...(step > 0 ? { gaugeStep: step } : {}),
      ...(limit === null ? {} : { gaugeLimit: limit }),
    });
  }, [design, place, pullsAlong, step, limit, typed, which]);
}

import { shownUnit } from '../../../state/shownUnits';
import { useAppState } from '../../../ui/session';
import { say } from '../../say';
import { NumberField } from '../NumberField';
import type { LumpPlace } from './fixes';

/** What may be typed, mm: along the blade from the shaft, and from the feathering axis. */
const STATION = { min: -1000, max: 1000 };
const RADIUS = { min: 1, max: 1000 };

/** Where a lump that is offered sits. */
export function LumpFields(props: {
  readonly place: LumpPlace;
  readonly onChange: (place: LumpPlace) => void;
}) {
  const { place, onChange } = props;
  const units = useAppState((state) => state.settings.units);
  const { name: unit, perShown } = shownUnit('mm', units);
  const field = (
    label: string,
    testId: string,
    valueMm: number,
    limits: typeof STATION,
    put: (mm: number) => LumpPlace,
  ) => (
    <NumberField
      label={label}
      unit={unit}
      min={Number((limits.min / perShown).toPrecision(4))}
      max={Number((limits.max / perShown).toPrecision(4))}
      value={valueMm / perShown}
      testId={testId}
      onChange={(value) => value !== null && onChange(put(value * perShown))}
    />
  );
  return (
    <div className="bench-fields" role="group" aria-label={say('benchRoom.correct.place')}>
      {field(
        say('benchRoom.correct.station'),
        'bench-lump-station',
        place.stationMm,
        STATION,
        (stationMm) => ({ ...place, stationMm }),
      )}
      {field(
        say('benchRoom.correct.radius'),
        'bench-lump-radius',
        place.radiusMm,
        RADIUS,
        (radiusMm) => ({ ...place, radiusMm }),
      )}
    </div>
  );
}

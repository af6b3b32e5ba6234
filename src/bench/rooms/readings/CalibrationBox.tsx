import { useRef, useState } from 'react';
import { degreesFromRadians, type Radians, radians } from '../../../engine/units';
import { showDegrees, significant } from '../../../state/quantities';
import { useRestingDesign, useSession } from '../../../ui/session';
import { calibrate } from '../../calibrate';
import { say } from '../../say';
import { NumberField } from '../NumberField';
import { useBench, useDesk } from '../useDesk';

const SCALE = { min: -10_000, max: 10_000 };
const PITCH = { min: -90, max: 90 };

/** Pairs of scale reading and measured pitch, and the calibration that they give with what is left over. */
export function CalibrationBox() {
  const desk = useDesk();
  const pairs = useBench((state) => state.pairs);
  const kind = useBench((state) => state.calibration);
  const scaleUnit = useBench((state) => state.scaleUnit);
  const [next, setNext] = useState<{ scale: number | null; pitchDeg: number | null }>({
    scale: null,
    pitchDeg: null,
  });
  const { live } = useSession();
  useRestingDesign();
  const made = calibrate({ pairs, scaleUnit, calibration: kind }, live.reading);
  const { scale, pitchDeg } = next;
  const fields = useRef<HTMLDivElement>(null);
  const [lacks, setLacks] = useState(false);
  function add(): void {
    const isWhole = scale !== null && pitchDeg !== null;
    setLacks(!isWhole);
    if (!isWhole) return;
    desk.set({ pairs: [...pairs, { scale, pitchDeg }] });
    setNext({ scale: null, pitchDeg: null });
    // The next pair begins where this one did.
    fields.current?.querySelector('input')?.focus();
  }
  return (
    <div className="bench-stack" data-testid="bench-calibration">
      <p className="lower-quiet">{say('benchRoom.calibrationHelp')}</p>
      <div className="bench-fields" ref={fields}>
        <NumberField
          label={say('benchRoom.pairScale')}
          unit={scaleUnit}
          {...SCALE}
          value={scale}
          empty=""
          testId="bench-pair-scale"
          onChange={(value) => setNext({ ...next, scale: value })}
        />
        <NumberField
          label={say('benchRoom.pairPitch')}
          unit={'\u00b0'}
          {...PITCH}
          value={pitchDeg}
          empty=""
          testId="bench-pair-pitch"
          onChange={(value) => setNext({ ...next, pitchDeg: value })}
        />
        <button type="button" className="ui-button" data-testid="bench-pair-add" onClick={add}>
          {say('benchRoom.addPair')}
        </button>
        {lacks && (
          <p className="bench-fault bench-wide" role="alert">
            {say('benchRoom.pairLacks')}
          </p>
        )}
        <label className="bench-field">
          {say('benchRoom.calibrationKind')}
          <select
            className="ui-select"
            value={kind}
            data-testid="bench-calibration-kind"
            onChange={({ target }) => desk.set({ calibration: target.value as 'line' | 'linkage' })}
          >
            <option value="line">{say('benchRoom.kind.line')}</option>
            <option value="linkage" disabled={!live.reading.linkage}>
              {say('benchRoom.kind.linkage') +
                (live.reading.linkage ? '' : say('benchRoom.kind.noLinkage'))}
            </option>
          </select>
        </label>
        <label className="bench-field">
          {say('benchRoom.scaleUnit')}
          <select
            className="ui-select"
            value={scaleUnit}
            onChange={({ target }) => desk.set({ scaleUnit: target.value as 'mm' | 'div' })}
          >
            <option value="mm">mm</option>
            <option value="div">{say('benchRoom.divisions')}</option>
          </select>
        </label>
      </div>
      {pairs.length > 0 && (
        <table className="lower-table bench-narrow" data-testid="bench-pairs">
          <thead>
            <tr>
              <th scope="col" className="lower-number">
                {say('benchRoom.pairScale')}
              </th>
              <th scope="col" className="lower-number">
                {say('benchRoom.pairPitch')}
              </th>
              <th scope="col" className="lower-number">
                {say('benchRoom.leftOver')}
              </th>
              <th scope="col">
                <span className="ui-unseen">{say('benchRoom.remove')}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {pairs.map((pair, k) => (
              <tr key={k}>
                <td className="lower-number">
                  {significant(pair.scale, 5)} {scaleUnit}
                </td>
                <td className="lower-number">{showDegrees(pair.pitchDeg, 2)}</td>
                <td className="lower-number">
                  {made.ok
                    ? showDegrees(degreesFromRadians(radians(made.value.residual[k])), 2)
                    : ''}
                </td>
                <td>
                  <button
                    type="button"
                    className="bench-link"
                    onClick={() => desk.set({ pairs: pairs.filter((_, i) => i !== k) })}
                  >
                    {say('benchRoom.remove')}
                  </button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <p role="status" data-testid="bench-calibration-said">
        {made.ok
          ? Number.isNaN(made.value.deviation)
            ? say('benchRoom.calibratedBare')
            : say('benchRoom.calibrated', {
                deviation: showDegrees(degreesFromRadians(made.value.deviation as Radians), 2),
                pairs: pairs.length,
              })
          : say(`benchRoom.calibrationFault.${made.error.kind}`)}
      </p>
    </div>
  );
}

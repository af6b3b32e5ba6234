import { displayForce, fixed, show } from '../../../state/quantities';
import { useAppState } from '../../../ui/session';
import type { BenchPlan, PlannedRung } from '../../plan';
import { RUNG_KEYS, type RungKey, rungName } from '../../rungs';
import { say } from '../../say';
import { useBench, useDesk } from '../useDesk';
import { fleesFlat, partName } from './planText';

/** The steps of the ladder: which are made, what is new on each, how fast it turns and how high the gauge reads. */
export function RungTable(props: {
  readonly plan: BenchPlan;
  readonly chosen: RungKey;
  readonly onChoose: (key: RungKey) => void;
}) {
  const { plan } = props;
  const desk = useDesk();
  const typed = useBench((state) => state.plan);
  const rows = RUNG_KEYS.flatMap((key) => {
    const rung = plan.rungs.find((one) => one.key === key);
    return rung || plan.leftOut.includes(key) ? [{ key, rung }] : [];
  });
  const isLast = (rung: PlannedRung | undefined) => rung !== undefined && plan.rungs.length === 1;
  function make(key: RungKey, isMade: boolean): void {
    const others = plan.leftOut.filter((one) => one !== key);
    const { leftOut: _, ...rest } = typed;
    const leftOut = isMade ? others : [...others, key];
    desk.set({ plan: leftOut.length === 0 ? rest : { ...rest, leftOut } });
  }
  return (
    <table className="lower-table" data-testid="bench-rungs">
      <thead>
        <tr>
          <th scope="col">{say('benchRoom.plan.make')}</th>
          <th scope="col">{say('benchRoom.fit.rung')}</th>
          <th scope="col">{say('benchRoom.plan.added')}</th>
          <th scope="col" className="lower-number">
            {say('benchRoom.head.speed')}
          </th>
          <th scope="col" className="lower-number">
            {say('benchRoom.plan.highestHead')}
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ key, rung }) => (
          <tr key={key} data-left={rung ? undefined : true}>
            <td>
              <input
                type="checkbox"
                checked={rung !== undefined}
                aria-disabled={isLast(rung)}
                title={isLast(rung) ? say('benchRoom.plan.oneRung') : undefined}
                aria-label={say('benchRoom.plan.makeOf', { rung: rungName(key) })}
                data-testid={`bench-make-${key}`}
                onChange={({ target }) => !isLast(rung) && make(key, target.checked)}
              />
            </td>
            <th scope="row">
              {rung ? (
                <button
                  type="button"
                  className="lower-name"
                  aria-pressed={key === props.chosen}
                  onClick={() => props.onChoose(key)}
                >
                  {rungName(key)}
                </button>
              ) : (
                rungName(key)
              )}
            </th>
            {rung ? (
              <MadeCells rung={rung} />
            ) : (
              <td colSpan={3}>{say('benchRoom.plan.notMade')}</td>
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function MadeCells({ rung }: { readonly rung: PlannedRung }) {
  const units = useAppState((state) => state.settings.units);
  const { key, added, design, speeds, highest } = rung;
  return (
    <>
      <td>
        {key === 'drag'
          ? say('benchRoom.plan.everything')
          : added.map((id) => partName(design, id)).join(', ')}
        {fleesFlat(rung) && <p className="bench-caution">{say('benchRoom.plan.flees')}</p>}
      </td>
      <td className="lower-number">
        {key === 'drag' ? say('benchRoom.plan.still') : speedsText(speeds)}
      </td>
      <td className="lower-number">{show(displayForce(highest, units))}</td>
    </>
  );
}

function speedsText(speeds: PlannedRung['speeds']): string {
  return `${speeds.map(({ speedRpm }) => fixed(speedRpm, 0)).join(', ')}\u00a0rpm`;
}

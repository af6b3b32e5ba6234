import type { HelpHead } from '../../state/help/helpHead';
import { sayHelp } from '../../state/help/helpText';
import { filled, shownTerm, symbolic } from '../../state/help/shownWork';
import { isAtPitch, TOPICS, type TopicId } from '../../state/help/topics';
import type { Worked } from '../../state/help/worked';
import { signedDegrees } from '../../state/words/pitchText';
import { useAppState } from '../session';
import { FormulaText } from './FormulaText';

/** The formula of an entry with the numbers of the head put in, line by line; or why there is no number. */
export function WorkedLines(props: { readonly id: TopicId; readonly head: HelpHead }) {
  const { id, head } = props;
  const units = useAppState((state) => state.settings.units);
  const found = TOPICS[id].work?.(head);
  if (!found) return null;
  if (found.kind === 'none') {
    return (
      <p className="help-none" data-testid="help-none">
        {sayHelp('help.none', { why: sayHelp(found.why) })}
      </p>
    );
  }
  return (
    <section className="help-work" data-testid="help-work">
      <h4 className="help-heading">
        {sayHelp(headingOf(id), { pitch: signedDegrees(head.pitchDeg) })}
      </h4>
      {found.lines.map((line, at) => (
        // Two bearings may have the same name.
        <Line key={`${at} ${line.result.symbol}`} line={line} units={units} />
      ))}
      <p className="help-quiet">{sayHelp('help.worth')}</p>
    </section>
  );
}

function headingOf(id: TopicId) {
  if (!isAtPitch(id)) return 'help.here' as const;
  return TOPICS[id].group === 'loads' ? ('help.hereLoads' as const) : ('help.hereAt' as const);
}

function Line(props: { readonly line: Worked; readonly units: Parameters<typeof shownTerm>[1] }) {
  const { line, units } = props;
  const result = shownTerm(line.result, units);
  const numbers = filled(line, units);
  return (
    <div className="help-line">
      <span className="help-left">
        <FormulaText text={line.result.symbol} />
      </span>
      <div>
        {line.formula !== '' && (
          <p>
            = <FormulaText text={symbolic(line)} />
          </p>
        )}
        {line.formula !== '' && numbers !== result && <p>= {numbers}</p>}
        <p>
          = <strong data-testid="help-result">{result}</strong>
          {line.formula === '' && <span className="help-quiet"> ({valueNote(line)})</span>}
        </p>
      </div>
    </div>
  );
}

function valueNote({ result, note }: Worked): string {
  if (note) return sayHelp(note);
  return sayHelp(result.measure === 'angle' ? 'help.foundByPage' : 'help.valueOf');
}

import type { ReactNode } from 'react';
import { sayHelp, sayOptional } from '../../state/help/helpText';
import { isTopic, TOPICS, type TopicId } from '../../state/help/topics';
import { FormulaText } from './FormulaText';
import { useHelpHead } from './useHelpHead';
import { WorkedLines } from './WorkedLines';
import './help.css';

/** Everything that an entry says, without its name. */
export function TopicBody(props: {
  readonly id: TopicId;
  readonly figure?: ReactNode;
  readonly onSee: (id: TopicId) => void;
}) {
  const { id } = props;
  const topic = TOPICS[id];
  const head = useHelpHead();
  const formula = sayOptional(`help.${id}.formula`);
  const sign = sayOptional(`help.${id}.sign`);
  return (
    <div className="help-body">
      <p>{sayHelp(`help.${id}.what`)}</p>
      {props.figure}
      {formula !== null && (
        <p className="help-formula">
          <FormulaText text={formula} />
        </p>
      )}
      {sign !== null && (
        <p>
          <span className="help-heading">{sayHelp('help.sign')}:</span> <FormulaText text={sign} />
        </p>
      )}
      <WorkedLines id={id} head={head} />
      <p className="help-quiet">
        <span className="help-heading">{sayHelp('help.source')}:</span>{' '}
        {topic.sources.map((source) => sayHelp(`help.source.${source}`)).join(' ')}
      </p>
      <p className="help-see">
        <span className="help-heading">{sayHelp('help.see')}:</span>
        {topic.see.filter(isTopic).map((other) => (
          <button
            key={other}
            type="button"
            className="help-link"
            data-testid={`see-${other}`}
            onClick={() => props.onSee(other)}
          >
            <FormulaText text={sayHelp(`help.${other}.name`)} />
          </button>
        ))}
      </p>
    </div>
  );
}

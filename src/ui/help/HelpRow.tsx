import { sayHelp } from '../../state/help/helpText';
import type { TopicId } from '../../state/help/topics';
import { FormulaText } from './FormulaText';
import { HelpName } from './HelpName';
import './help.css';

/**
 * The quantities of a room that loads later, each pressed to learn what it is: where they stand in sentences and charts,
 * whose words cannot be pressed.
 */
export function HelpRow(props: { readonly ids: readonly TopicId[] }) {
  return (
    <p className="help-row">
      {sayHelp('help.explained')}
      {props.ids.map((id) => (
        <HelpName key={id} id={id}>
          <FormulaText text={sayHelp(`help.${id}.name`)} />
        </HelpName>
      ))}
    </p>
  );
}

import { HelpName } from '../../ui/help/HelpName';
import { fieldTopic } from './fieldTopics';

/** The name of a field beside its input; where the number is a quantity of the help, pressed to learn what it is. */
export function FieldLabel(props: {
  readonly input: string;
  readonly field: { readonly key: string; readonly label: string };
}) {
  const { input, field } = props;
  const topic = fieldTopic(field.key);
  if (topic === null) {
    return (
      <label className="field-label" htmlFor={input}>
        {field.label}
      </label>
    );
  }
  return (
    <span className="field-label">
      <label className="ui-unseen" htmlFor={input}>
        {field.label}
      </label>
      <HelpName id={topic}>{field.label}</HelpName>
    </span>
  );
}

import { type ComponentProps, type ReactNode, useId, useState } from 'react';
import { t } from '../../messages';
import { ChoiceRow } from '../../ui/ChoiceRow';
import { Press } from '../../ui/Press';

/** A part of the room under a heading of its own. */
export function FileSection(props: {
  readonly title: string;
  readonly testId: string;
  readonly children: ReactNode;
}) {
  const id = useId();
  return (
    <section className="files-section" aria-labelledby={id} data-testid={props.testId}>
      <h3 className="ui-heading" id={id}>
        {props.title}
      </h3>
      {props.children}
    </section>
  );
}

/** One choice of a list, its name before it. */
export function FileChoice<T extends string>(props: ComponentProps<typeof ChoiceRow<T>>) {
  return (
    <div className="files-row">
      <ChoiceRow {...props} />
    </div>
  );
}

/** A button that saves, and what came of it. */
export function SaveButton(props: {
  readonly text: string;
  readonly testId: string;
  readonly disabled?: boolean;
  /** Says what came of it. */
  readonly save: () => Promise<string>;
}) {
  const [said, setSaid] = useState('');
  const [busy, setBusy] = useState(false);
  async function press(): Promise<void> {
    setBusy(true);
    setSaid(t('files.busy'));
    setSaid(await props.save());
    setBusy(false);
  }
  return (
    <div className="files-save">
      <Press
        testId={props.testId}
        off={Boolean(props.disabled) || busy}
        onPress={() => void press()}
      >
        {props.text}
      </Press>
      <span role="status">{said}</span>
    </div>
  );
}

import type { ReactNode } from 'react';
import { spokenLanguage } from '../../messages/languages';
import type { Card } from '../../state/keep/records';

interface RowAction {
  readonly label: string;
  /** The whole sentence, for who hears it. */
  readonly name: string;
  readonly act: () => void;
  /** Why it cannot be done. */
  readonly hinder?: string | null;
}

/** What was done last in the dialog, and how it is taken back. */
export interface Said {
  readonly text: string;
  readonly undo?: (() => void) | undefined;
}

/** One kept thing: its name, when it was kept, what it is, and what can be done with it. */
export function CardRow(props: {
  readonly card: Card;
  readonly marks: readonly string[];
  readonly actions: readonly RowAction[];
  /** In place of the name. */
  readonly children?: ReactNode;
  readonly below?: ReactNode;
}) {
  const { card, marks } = props;
  return (
    <li className="keep-row">
      <div className="keep-what">
        {props.children ?? <span className="keep-name">{nameOf(card)}</span>}
        <span className="keep-quiet">
          <time dateTime={new Date(card.savedAt).toISOString()}>{whenOf(card.savedAt)}</time>
          {marks.map((mark) => (
            <span key={mark}> {`\u00b7 ${mark}`}</span>
          ))}
        </span>
      </div>
      <div className="keep-actions">
        {props.actions.map(({ label, name, act, hinder = null }) => (
          <button
            key={label}
            type="button"
            className="ui-button"
            aria-label={name}
            title={hinder ?? name}
            aria-disabled={hinder !== null}
            onClick={() => hinder === null && act()}
          >
            {label}
          </button>
        ))}
      </div>
      {props.below}
    </li>
  );
}

/** The name that a state was given, else that of the design in it. */
export function nameOf(card: Card): string {
  return card.title ?? card.name;
}

/** In English as the browser has it, which knows whether the day or the month comes first. */
function when(): Intl.DateTimeFormat {
  const language = spokenLanguage() === 'en' ? undefined : spokenLanguage();
  return new Intl.DateTimeFormat(language, { dateStyle: 'medium', timeStyle: 'short' });
}

/** Day and time as the person's own system writes them. */
function whenOf(at: number): string {
  return when().format(at);
}

/** What a sentence about it names it by. */
export function namesOf(card: Card): { name: string; when: string } {
  return { name: nameOf(card), when: whenOf(card.savedAt) };
}

import { useId, useState } from 'react';
import { say } from '../../say';
import { useDesk } from '../useDesk';

/** A table as text: from a spreadsheet, a message, a terminal. */
export function PasteBox({ onDone }: { readonly onDone: () => void }) {
  const desk = useDesk();
  const id = useId();
  const [text, setText] = useState('');
  return (
    <div className="bench-stack">
      <label htmlFor={id} className="ui-heading">
        {say('benchRoom.pasteHere')}
      </label>
      <textarea
        id={id}
        className="bench-input bench-paste"
        spellCheck={false}
        autoFocus
        value={text}
        data-testid="bench-paste"
        onChange={(event) => setText(event.target.value)}
      />
      <div className="bench-buttons">
        <button
          type="button"
          className="ui-button ui-button-main"
          disabled={text.trim() === ''}
          data-testid="bench-look"
          onClick={() => {
            onDone();
            desk.offer({ name: say('benchRoom.pasted'), source: text });
          }}
        >
          {say('benchRoom.look')}
        </button>
        <button type="button" className="ui-button" onClick={onDone}>
          {say('benchRoom.cancel')}
        </button>
      </div>
    </div>
  );
}

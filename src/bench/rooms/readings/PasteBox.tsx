import { useId, useState } from 'react';
import { Press } from '../../../ui/Press';
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
        <Press
          main
          off={text.trim() === ''}
          why={say('benchRoom.lookWhy')}
          testId="bench-look"
          onPress={() => {
            onDone();
            desk.offer({ name: say('benchRoom.pasted'), source: text });
          }}
        >
          {say('benchRoom.look')}
        </Press>
        <button type="button" className="ui-button" onClick={onDone}>
          {say('benchRoom.cancel')}
        </button>
      </div>
    </div>
  );
}

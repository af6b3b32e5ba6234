import { type ReactNode, useRef, useState } from 'react';
import { t } from '../../messages';
import type { TopicId } from '../../state/help/topics';
import { lazyRoom } from '../lazyRoom';
import './helpName.css';

/** What is in it comes when it is first opened. */
const LazyCard = lazyRoom(() => import('./HelpCard').then(({ HelpCard }) => HelpCard));

/**
 * The name of a quantity where the page shows it: a quiet button that opens what it is, its sign, its formula with the
 * numbers of this head, and where it is from.
 */
export function HelpName(props: {
  readonly id: TopicId;
  readonly className?: string;
  readonly children: ReactNode;
}) {
  const { id, className } = props;
  const button = useRef<HTMLButtonElement>(null);
  const [open, setOpen] = useState(false);
  return (
    <>
      <button
        type="button"
        ref={button}
        className={className ? `help-name ${className}` : 'help-name'}
        aria-haspopup="dialog"
        aria-expanded={open}
        title={t('app.helpName')}
        data-help-topic={id}
        onClick={() => setOpen(true)}
      >
        {props.children}
      </button>
      {open && <LazyCard id={id} anchor={button} onClosed={() => setOpen(false)} />}
    </>
  );
}

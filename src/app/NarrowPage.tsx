import { type ReactNode, useState } from 'react';
import { t } from '../messages';
import { ChartRoom, DialRoom, FieldsRoom, RailRoom, StageRoom } from './rooms';

/** One column for a phone: dial and chart to read at once, the rest folded and made only when it is opened. */
export function NarrowPage() {
  return (
    <div className="app-rooms">
      <div className="app-dial" id="dial" tabIndex={-1}>
        <DialRoom />
      </div>
      <div className="app-chart">
        <ChartRoom />
      </div>
      <Fold title={t('app.stageFold')} className="app-stage">
        <StageRoom />
      </Fold>
      <Fold title={t('app.parts')} className="app-rail">
        <RailRoom />
      </Fold>
      <Fold title={t('app.numbers')} className="app-fields">
        <FieldsRoom />
      </Fold>
    </div>
  );
}

function Fold(props: {
  readonly title: string;
  readonly className: string;
  readonly children: ReactNode;
}) {
  const [open, setOpen] = useState(false);
  return (
    <details className="app-fold" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{props.title}</summary>
      {open && <div className={props.className}>{props.children}</div>}
    </details>
  );
}

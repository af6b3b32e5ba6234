import { type ReactNode, useState } from 'react';
import { t } from '../messages';
import { useAppState } from '../ui/session';
import { ChartRoom, DialRoom, FieldsRoom, LeftRoom, leftOf, RailRoom, StageRoom } from './rooms';

/** One column for a phone: dial and chart to read at once, the rest folded and made only when it is opened. */
export function NarrowPage() {
  const left = leftOf(useAppState((state) => state.settings.room));
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
      {left && (
        <Fold title={t(left.label)} className="app-rail">
          <LeftRoom />
        </Fold>
      )}
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

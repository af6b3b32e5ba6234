import { X } from 'lucide-react';
import { type KeyboardEvent, type ReactNode, useEffect, useRef } from 'react';
import { t } from '../messages';
import { useAppState } from '../ui/session';
import { ChartRoom, DialRoom, FieldsRoom, LeftRoom, leftOf, RailRoom, StageRoom } from './rooms';

/** What can be pulled over the sides of the page when it is too narrow for everything. */
export type DrawerName = 'left' | 'parts' | 'numbers';

/** Stage, dial and chart; parts and numbers in drawers over the sides. */
export function MiddlePage(props: {
  readonly drawer: DrawerName | null;
  readonly onDrawer: (drawer: DrawerName | null) => void;
}) {
  const { drawer, onDrawer } = props;
  const left = leftOf(useAppState((state) => state.settings.room));
  return (
    <div className="app-rooms">
      <div className="app-stage">
        <StageRoom />
      </div>
      <div className="app-dial" id="dial" tabIndex={-1}>
        <DialRoom />
      </div>
      <div className="app-chart">
        <ChartRoom />
      </div>
      {left && drawer === 'left' && (
        <Drawer side="left" label={t(left.label)} onClose={() => onDrawer(null)}>
          <LeftRoom />
        </Drawer>
      )}
      {drawer === 'parts' && (
        <Drawer side="left" label={t('app.parts')} onClose={() => onDrawer(null)}>
          <RailRoom />
        </Drawer>
      )}
      {drawer === 'numbers' && (
        <Drawer side="right" label={t('app.numbers')} onClose={() => onDrawer(null)}>
          <FieldsRoom />
        </Drawer>
      )}
    </div>
  );
}

/** The two buttons that open and close the drawers. */
export function DrawerButtons(props: {
  readonly drawer: DrawerName | null;
  readonly onDrawer: (drawer: DrawerName | null) => void;
}) {
  const { drawer, onDrawer } = props;
  const left = leftOf(useAppState((state) => state.settings.room));
  const names: readonly DrawerName[] = left ? ['left', 'parts', 'numbers'] : ['parts', 'numbers'];
  return (
    <div className="app-bar-group">
      {names.map((name) => (
        <button
          key={name}
          type="button"
          className="ui-button"
          aria-expanded={drawer === name}
          data-testid={`drawer-${name}`}
          onClick={() => onDrawer(drawer === name ? null : name)}
        >
          {name === 'left' ? left && t(left.short) : t(`app.${name}`)}
        </button>
      ))}
    </div>
  );
}

/** Lies over one side and leaves the rest usable. Takes the focus when it opens; Escape closes it. */
function Drawer(props: {
  readonly side: 'left' | 'right';
  readonly label: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}) {
  const drawer = useRef<HTMLElement>(null);
  useEffect(() => {
    const opener = document.activeElement as HTMLElement | null;
    drawer.current?.focus();
    return () => opener?.focus();
  }, []);
  function onKeyDown(event: KeyboardEvent): void {
    if (event.key !== 'Escape' || event.defaultPrevented) return;
    // The menu in front goes first.
    if (document.querySelector(':popover-open')) return;
    event.preventDefault();
    props.onClose();
  }
  return (
    <aside
      ref={drawer}
      className="app-drawer"
      data-side={props.side}
      aria-label={props.label}
      tabIndex={-1}
      onKeyDown={onKeyDown}
    >
      <button
        type="button"
        className="ui-button ui-button-icon ui-button-bare app-drawer-close"
        aria-label={t('app.close')}
        title={t('app.close')}
        onClick={props.onClose}
      >
        <X aria-hidden="true" />
      </button>
      {props.children}
    </aside>
  );
}

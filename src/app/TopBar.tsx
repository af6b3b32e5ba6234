import { CircleHelp, FilePlus2, FolderOpen, Redo2, Save, Undo2 } from 'lucide-react';
import type { ReactNode } from 'react';
import { useStore } from 'zustand';
import { t } from '../messages';
import { Gallery } from '../panels/gallery/Gallery';
import {
  type DisplayUnits,
  INCH_UNITS,
  METRIC_UNITS,
  MIXED_UNITS,
  ROOMS,
  type Settings,
} from '../state/settings';
import { sameUnits } from '../state/unitSteps';
import { useAppState, useSession } from '../ui/session';
import { useServices } from './AppContext';
import { DesignName } from './DesignName';
import { demoDesigns } from './demoDesigns';
import { DesignsButton } from './keep/DesignsButton';
import { ShareButton } from './share/ShareButton';
import { useStepsSaid } from './stepsSaid';
import { TryOutChooser } from './TryOutChooser';
import { Wordmark } from './Wordmark';

/** Name, files, demo heads, undo, units, theme and help. */
export function TopBar(props: { readonly onHelp: () => void; readonly children: ReactNode }) {
  const { desk } = useServices();
  return (
    <header className="app-bar" aria-label={t('app.toolbar')}>
      <h1 className="app-wordmark">
        <Wordmark />
        {t('app.name')}
      </h1>
      <RoomChoice />
      {props.children}
      <DesignName />
      <TryOutChooser />
      <div className="app-bar-group">
        <Gallery
          entries={demoDesigns()}
          onOpen={(entry) => desk.openSample(entry.title, entry.text)}
        />
      </div>
      <div className="app-bar-group">
        <Tool label={t('app.newTitle')} text={t('app.new')} onClick={() => desk.startNew()}>
          <FilePlus2 aria-hidden="true" />
        </Tool>
        <Tool label={t('app.openTitle')} text={t('app.open')} onClick={() => void desk.open()}>
          <FolderOpen aria-hidden="true" />
        </Tool>
        <DesignsButton />
        <Tool label={t('app.saveTitle')} text={t('app.save')} onClick={() => void desk.save()}>
          <Save aria-hidden="true" />
        </Tool>
        <ShareButton />
      </div>
      <UndoRedo />
      <div className="app-bar-group app-bar-end">
        <UnitsChoice />
        <ThemeChoice />
        <Tool label={t('app.help')} onClick={props.onHelp} testId="help">
          <CircleHelp aria-hidden="true" />
        </Tool>
      </div>
    </header>
  );
}

function Tool(props: {
  readonly label: string;
  readonly text?: string;
  /** Off for a while; it keeps the focus, which a disabled button would drop. */
  readonly off?: boolean;
  readonly testId?: string;
  readonly onClick: () => void;
  readonly children: ReactNode;
}) {
  const { off = false } = props;
  return (
    <button
      type="button"
      className={
        props.text ? 'ui-button ui-button-bare app-tool' : 'ui-button ui-button-bare ui-button-icon'
      }
      aria-label={props.label}
      title={props.label}
      aria-disabled={off || undefined}
      data-testid={props.testId}
      onClick={() => {
        if (!off) props.onClick();
      }}
    >
      {props.children}
      {props.text && <span className="app-tool-text">{props.text}</span>}
    </button>
  );
}

/** The rooms that share stage, dial and chart. */
function RoomChoice() {
  const { actions } = useSession();
  const room = useAppState((state) => state.settings.room);
  return (
    <nav className="app-room-choice" aria-label={t('app.rooms')}>
      {ROOMS.map((name) => (
        <button
          key={name}
          type="button"
          className="app-room"
          aria-current={name === room ? 'page' : undefined}
          data-testid={`room-${name}`}
          onClick={() => actions.setSettings({ room: name })}
        >
          {t(`app.room.${name}`)}
        </button>
      ))}
    </nav>
  );
}

function UndoRedo() {
  const { store, actions } = useSession();
  const canUndo = useStore(store.temporal, (history) => history.pastStates.length > 0);
  const canRedo = useStore(store.temporal, (history) => history.futureStates.length > 0);
  const said = useStepsSaid();
  return (
    <div className="app-bar-group">
      <Tool label={t('app.undo')} off={!canUndo} onClick={actions.undo} testId="undo">
        <Undo2 aria-hidden="true" />
      </Tool>
      <Tool label={t('app.redo')} off={!canRedo} onClick={actions.redo} testId="redo">
        <Redo2 aria-hidden="true" />
      </Tool>
      <p className="ui-unseen" role="status">
        {said}
      </p>
    </div>
  );
}

const UNIT_SETS: readonly (readonly [string, DisplayUnits])[] = [
  ['metric', METRIC_UNITS],
  ['mixed', MIXED_UNITS],
  ['inch', INCH_UNITS],
];

function UnitsChoice() {
  const { actions } = useSession();
  const units = useAppState((state) => state.settings.units);
  const name = UNIT_SETS.find(([, set]) => sameUnits(set, units))?.[0] ?? 'other';
  return (
    <select
      className="ui-select"
      aria-label={t('app.units')}
      title={t('app.units')}
      data-testid="units"
      value={name}
      onChange={(event) => {
        const set = UNIT_SETS.find(([key]) => key === event.target.value)?.[1];
        if (set) actions.setUnits(set);
      }}
    >
      <option value="metric">{t('app.unitsMetric')}</option>
      <option value="mixed">{t('app.unitsMixed')}</option>
      <option value="inch">{t('app.unitsInch')}</option>
      {name === 'other' && <option value="other">{t('app.unitsOther')}</option>}
    </select>
  );
}

function ThemeChoice() {
  const { actions } = useSession();
  const theme = useAppState((state) => state.settings.theme);
  return (
    <select
      className="ui-select app-theme"
      aria-label={t('app.theme')}
      title={t('app.theme')}
      data-testid="theme"
      value={theme}
      onChange={(event) => actions.setSettings({ theme: event.target.value as Settings['theme'] })}
    >
      <option value="system">{t('app.themeSystem')}</option>
      <option value="light">{t('app.themeLight')}</option>
      <option value="dark">{t('app.themeDark')}</option>
    </select>
  );
}

import { Component, type ReactNode } from 'react';
import { t } from '../messages';
import { FaultReport } from './FaultReport';

interface Props {
  /** The room, as a person knows it. */
  readonly room: string;
  readonly children: ReactNode;
}

/** Keeps the fault of one room in that room: the rest of the page goes on, and the room can be tried again. */
export class Guard extends Component<Props, { readonly error: Error | null }> {
  override state = { error: null as Error | null };

  static getDerivedStateFromError(error: unknown) {
    return { error: error instanceof Error ? error : new Error(String(error)) };
  }

  override render() {
    const { error } = this.state;
    if (!error) return this.props.children;
    return (
      <div className="app-guard" role="alert">
        <p className="app-guard-room">{this.props.room}</p>
        <p>{t('app.roomFailed', { reason: error.message })}</p>
        <p>{t('app.roomFailedNote')}</p>
        <button type="button" className="ui-button" onClick={() => this.setState({ error: null })}>
          {t('app.tryAgain')}
        </button>
        <FaultReport place={this.props.room} error={error} />
      </div>
    );
  }
}

import { Component, type ReactNode } from 'react';
import { t } from '../messages';

/** A plain note in place of the stage when the 3D view cannot be drawn: the rest of the page goes on. */
export function StageNote({ text }: { readonly text: string }) {
  return (
    <div className="stage-note" role="note">
      <p>{text}</p>
    </div>
  );
}

export class StageBoundary extends Component<
  { readonly children: ReactNode },
  { readonly failed: boolean }
> {
  override state = { failed: false };

  static getDerivedStateFromError(): { readonly failed: boolean } {
    return { failed: true };
  }

  override render(): ReactNode {
    return this.state.failed ? <StageNote text={t('stage.failed')} /> : this.props.children;
  }
}

let available: boolean | null = null;

/** Whether this browser can draw the stage at all. Asked once; the trial context is given back. */
export function hasWebGl(): boolean {
  if (available === null) {
    const context = document.createElement('canvas').getContext('webgl2');
    available = context !== null;
    context?.getExtension('WEBGL_lose_context')?.loseContext();
  }
  return available;
}

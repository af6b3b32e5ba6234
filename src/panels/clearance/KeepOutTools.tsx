import { recastPart } from '../../design/recast';
import { t } from '../../messages';
import { isKeepOut } from '../../parts/contract';
import { partType } from '../../parts/registry';
import { tellRefusal } from '../../state/editing';
import { lengthText, signedPitch } from '../../state/gapText';
import { useAppState, useRestingDesign, useSession } from '../../ui/session';
import { useFoundClearance } from './useFoundClearance';
import './clearance.css';

/**
 * What a keep-out's fields end with: how near anything comes, and its frame. For it and for a body from a mesh: the button
 * that turns one into the other.
 */
export function KeepOutTools({ partId }: { readonly partId: string }) {
  const { parts, rotor } = useRestingDesign();
  const part = parts.find((one) => one.id === partId);
  if (!part) return null;
  const keepsOut = isKeepOut(partType(part.kind));
  const canTurn = recastPart(part, rotor) !== null;
  return (
    <section className="fields-group clearance-tools">
      {keepsOut && <Nearest id={partId} />}
      {keepsOut && <p>{t('clearance.placement')}</p>}
      {canTurn && <Recast id={partId} keepsOut={keepsOut} />}
    </section>
  );
}

/** The least gap to this keep-out. */
function Nearest({ id }: { readonly id: string }) {
  const { live } = useSession();
  const units = useAppState((state) => state.settings.units);
  const { pairs } = useFoundClearance();
  const pair = pairs.find((one) => one.keepOut === id);
  if (!pair) return null;
  const length = lengthText(Math.abs(pair.gap), units);
  return (
    <p className="clearance-here" data-testid="keep-out-nearest">
      {t('clearance.nearestHere', {
        part: live.reading.part(pair.part)?.part.name || pair.part,
        length: pair.meeting === 'clear' ? length : t('clearance.in', { depth: length }),
        pitch: signedPitch(pair.pitchDeg),
      })}
    </p>
  );
}

function Recast({ id, keepsOut }: { readonly id: string; readonly keepsOut: boolean }) {
  const session = useSession();
  const help = t(keepsOut ? 'clearance.useAsBodyHelp' : 'clearance.useAsKeepOutHelp');
  return (
    <button
      type="button"
      className="ui-button"
      data-help={help}
      title={help}
      data-testid="recast-part"
      onClick={() => tellRefusal(session, session.actions.recastPart(id), id)}
    >
      {t(keepsOut ? 'clearance.useAsBody' : 'clearance.useAsKeepOut')}
    </button>
  );
}

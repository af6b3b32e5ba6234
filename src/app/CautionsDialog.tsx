import { type MessageKey, t } from '../messages';
import { Dialog } from '../ui/Dialog';
import { useAppState } from '../ui/session';
import { KeptNote } from './offline/KeptNote';

const BENCH: readonly MessageKey[] = [
  'app.cautionGuard',
  'app.cautionPlane',
  'app.cautionSlow',
  'app.cautionBolt',
];
const WORTH: readonly MessageKey[] = ['app.cautionEstimate', 'app.cautionMaker', 'app.cautionDemo'];
const MISSING: readonly MessageKey[] = [
  'app.cautionAir',
  'app.cautionFriction',
  'app.cautionRod',
  'app.cautionLag',
  'app.cautionStrength',
];

/** What to mind at the bench, what a result is worth, and what is not computed yet. */
export function CautionsDialog(props: { readonly open: boolean; readonly onClose: () => void }) {
  const note = useAppState((state) => state.design.note);
  return (
    <Dialog open={props.open} title={t('app.cautions')} onClose={props.onClose}>
      {note && (
        <>
          <h3>{t('app.cautionsAbout')}</h3>
          <p>{note}</p>
        </>
      )}
      <List title="app.cautionsBench" items={BENCH} />
      <List title="app.cautionsWorth" items={WORTH} />
      <List title="app.cautionsNot" items={MISSING} />
      <KeptNote />
    </Dialog>
  );
}

function List(props: { readonly title: MessageKey; readonly items: readonly MessageKey[] }) {
  return (
    <>
      <h3>{t(props.title)}</h3>
      <ul>
        {props.items.map((item) => (
          <li key={item}>{t(item)}</li>
        ))}
      </ul>
    </>
  );
}

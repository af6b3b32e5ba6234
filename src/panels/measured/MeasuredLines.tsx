import { useRef } from 'react';
import { MEASURED_QUANTITIES } from '../../design/bodyMoments';
import { type MeasuredReport, measuredReport } from '../../design/measuredReport';
import { materialsOf } from '../../design/resolve';
import { t } from '../../messages';
import { materialName } from '../../state/words/materialText';
import { useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';
import { setText } from '../marks/svg';
import { assumptionText, densityText, inUseText, reportLines } from './reportText';

/** What was measured against the drawing, line by line; follows drags by writing to the page itself. */
export function MeasuredLines(props: { readonly partId: string }) {
  const { partId } = props;
  const { store, live } = useSession();
  const root = useRef<HTMLDivElement>(null);
  useLive((_, { parts, settings, design }) => {
    if (!root.current || !(settings || design)) return;
    if (!settings && parts !== 'all' && !parts.has(partId)) return;
    const placed = live.model.placed(partId);
    if (!placed) return;
    const materials = materialsOf(store.getState().design);
    const report = measuredReport(placed.part, placed.values, materials);
    const { units } = store.getState().settings;
    const nameOf = (id: string) => materialName(id, materials);
    write(root.current, report, units, nameOf);
  });
  return (
    <div className="measured-report" ref={root} data-testid="measured-report">
      <p data-place="inUse" />
      <p data-place="density" />
      <ul className="measured-lines" aria-label={t('measured.report')}>
        {MEASURED_QUANTITIES.map((what) => (
          <li key={what} data-what={what} hidden>
            <span className="measured-mark" aria-hidden="true" />
            <span className="measured-label">{t(`measured.what.${what}`)}</span>
            <span data-part="values" />
            <span data-part="verdict" />
          </li>
        ))}
      </ul>
      <p className="measured-note" data-place="assumed" />
    </div>
  );
}

function write(
  root: HTMLElement,
  report: MeasuredReport | null,
  units: Parameters<typeof inUseText>[1],
  nameOf: (material: string) => string,
): void {
  const lines = report ? reportLines(report, units) : [];
  setPlace(root, 'inUse', report ? inUseText(report, units) : t('measured.noMass'));
  setPlace(root, 'density', report && densityText(report, units));
  setPlace(
    root,
    'assumed',
    report && lines.length > 0 ? assumptionText(report, nameOf, units) : null,
  );
  for (const item of root.querySelectorAll<HTMLElement>('[data-what]')) {
    const line = lines.find(({ what }) => what === item.dataset.what);
    item.hidden = !line;
    if (!line) continue;
    item.toggleAttribute('data-disagrees', line.disagrees);
    for (const name of ['values', 'verdict'] as const) {
      const span = item.querySelector(`[data-part="${name}"]`);
      if (span) setText(span, line[name]);
    }
  }
}

function setPlace(root: HTMLElement, place: string, text: string | null): void {
  const element = root.querySelector<HTMLElement>(`[data-place="${place}"]`);
  if (!element) return;
  element.hidden = text === null;
  setText(element, text ?? '');
}

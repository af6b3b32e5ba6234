import type { Part } from '../../design/design';
import { materialKeyOf, materialsOf } from '../../design/resolve';
import { t } from '../../messages';
import { phrase } from '../../messages/phrases';
import type { CatalogueReference } from '../../parts/catalogue';
import { partType } from '../../parts/registry';
import { displayMass, show } from '../../state/quantities';
import { fieldLabel, refusalText } from '../../state/refusalText';
import { referenceText } from '../../state/words/catalogueText';
import { materialNumber } from '../../state/words/materialText';
import { useAppState } from '../../ui/session';
import type { CatalogueHit } from './catalogueSearch';
import { type Preview, previewOf } from './preview';
import { valueText } from './standardText';

/** What the part would be with the row taken: its dimensions and mass, and where the row comes from. */
export function RowPreview(props: {
  readonly part: Part;
  readonly hit: CatalogueHit;
  readonly reference: CatalogueReference;
}) {
  const { part, reference } = props;
  const { standard, size } = props.hit;
  const units = useAppState((state) => state.settings.units);
  const design = useAppState((state) => state.design);
  const preview = previewOf(part, reference, materialsOf(design));
  if (!preview) return null;
  const { problem } = preview;
  return (
    <>
      <h3>{referenceText(reference)}</h3>
      <p className="pick-note">{phrase(standard.title)}</p>
      <dl className="pick-facts" data-testid="catalogue-preview">
        {preview.mass !== null && (
          <>
            <dt>
              {t('catalogue.mass')}{' '}
              <span className="pick-note">({densityText(part, preview)})</span>
            </dt>
            <dd data-testid="preview-mass">{show(displayMass(preview.mass, units))}</dd>
          </>
        )}
        {preview.row.map(([field, value]) => (
          <Fact
            key={field}
            label={fieldLabel(part, field)}
            text={valueText(part, field, value, units)}
          />
        ))}
      </dl>
      {problem && (
        <p className="pick-fault">
          {t('catalogue.unfit', {
            reason:
              problem.rule === 'unsound'
                ? phrase(problem.detail)
                : refusalText(problem, design, part.id, units),
          })}
        </p>
      )}
      <p className="pick-note">
        {t('catalogue.source')}: {phrase(size.source)}. {size.note && phrase(size.note)}{' '}
        {size.fromMemory && t('catalogue.fromMemoryNote')}
      </p>
    </>
  );
}

function Fact(props: { readonly label: string; readonly text: string }) {
  return (
    <>
      <dt>{props.label}</dt>
      <dd>{props.text}</dd>
    </>
  );
}

/** "7850 kg/m3", or both where a part has two densities. */
function densityText(part: Part, { values }: Preview): string {
  return Object.entries(partType(part.kind).parameters)
    .filter(([, parameter]) => materialKeyOf(parameter) !== undefined)
    .map(([name]) => materialNumber(values[name] as number, 'kg/m3'))
    .join(', ');
}

import { type ReactNode, useMemo } from 'react';
import type { Part } from '../../design/design';
import { partText, t } from '../../messages';
import { isKeepOut } from '../../parts/contract';
import { partType } from '../../parts/registry';
import { lazyRoom } from '../../ui/lazyRoom';
import { useSession } from '../../ui/session';
import { CatalogueRow } from '../catalogue/CatalogueRow';
import { FieldFold } from './FieldFold';
import { FieldGroup, FieldPanel } from './FieldGroup';
import { type FieldSection, parameterSections } from './parameterFields';
import { useSources } from './useShape';

const MeasuredGroup = lazyRoom(() =>
  import('../measured/MeasuredGroup').then((module) => module.MeasuredGroup),
);
const KeepOutTools = lazyRoom(() =>
  import('../clearance/KeepOutTools').then((module) => module.KeepOutTools),
);
const SpanPlot = lazyRoom(() => import('../profile/SpanPlot').then((module) => module.SpanPlot));
const SectionFile = lazyRoom(() =>
  import('../profile/SectionFile').then((module) => module.SectionFile),
);

/** Heading under which a type keeps the data of its section, where it has such. */
const SECTION_DATA = 'sectionCoordinates';

/** A part's own numbers: catalogue, dimensions and materials, what comes from files, what was measured. */
export function PartFields(props: { readonly part: Part }) {
  const { part } = props;
  const session = useSession();
  const sources = useSources();
  const sections = useMemo(() => {
    const now = session.live.model.placed(part.id)?.part ?? part;
    return { all: parameterSections(session, now), sources };
  }, [session, part, sources]);
  const [own, ...folds] = sections.all;
  const type = partType(part.kind);
  const data = type.parameters[SECTION_DATA];
  return (
    <>
      {type.catalogue && <CatalogueRow key={part.id} partId={part.id} />}
      <FieldGroup
        key={`own ${part.id}`}
        title={t('fields.dimensions')}
        fields={own.fields}
        partId={part.id}
      />
      {folds.map((fold) => (
        <Fold key={`${part.id} ${fold.group}`} part={part} fold={fold}>
          {data && (data.group ?? null) === fold.group && (
            <>
              <SectionFile partId={part.id} />
            </>
          )}
        </Fold>
      ))}
      <>
        {type.spanProfile && <SpanPlot key={`span ${part.id}`} partId={part.id} />}
        {isKeepOut(type) ? (
          <KeepOutTools key={`keep-out ${part.id}`} partId={part.id} />
        ) : (
          <MeasuredGroup key={`measured ${part.id}`} partId={part.id} />
        )}
        {type.fromFile && <KeepOutTools key={`keep-out ${part.id}`} partId={part.id} />}
      </>
    </>
  );
}

function Fold(props: {
  readonly part: Part;
  readonly fold: FieldSection;
  readonly children: ReactNode;
}) {
  const { part, fold } = props;
  const group = fold.group ?? '';
  return (
    <FieldFold
      kind={part.kind}
      group={group}
      title={partText(`group.${group}`, group)}
      changed={fold.changed}
    >
      {fold.fields.length > 0 && <FieldPanel fields={fold.fields} partId={part.id} />}
      {props.children}
    </FieldFold>
  );
}

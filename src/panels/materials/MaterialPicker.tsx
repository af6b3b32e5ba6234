import { useState } from 'react';
import { createPortal } from 'react-dom';
import { materialNamed } from '../../design/resolve';
import { t } from '../../messages';
import { partType } from '../../parts/registry';
import { Dialog } from '../../ui/Dialog';
import { useSession } from '../../ui/session';
import { MaterialList } from './MaterialList';
import { OwnMaterialForm } from './OwnMaterialForm';
import { draftOf, type MaterialDraft } from './ownMaterial';

/**
 * Chooses the material of one density, and makes and changes the design's own. What is typed of a material outlives
 * closing the dialog, until it is saved or left by its button.
 */
export function MaterialPicker(props: {
  readonly open: boolean;
  readonly onClose: () => void;
  readonly partId: string;
  readonly density: string;
  readonly title: string;
}) {
  const { open, partId, density, onClose } = props;
  const { live } = useSession();
  const [draft, setDraft] = useState<MaterialDraft | null>(null);
  const [active, setActive] = useState<string | null>(null);
  const part = open ? live.model.placed(partId)?.part : undefined;
  const named = part && materialNamed(part, partType(part.kind).parameters[density]);
  const title = draft ? t(draft.id === null ? 'materials.newTitle' : 'materials.editTitle') : null;
  return createPortal(
    <Dialog
      open={open}
      title={title ?? props.title}
      onClose={() => {
        setActive(null);
        onClose();
      }}
    >
      {part && draft && (
        <OwnMaterialForm
          draft={draft}
          onDraft={setDraft}
          onBack={() => setDraft(null)}
          onSaved={(id) => {
            setDraft(null);
            setActive(id);
          }}
        />
      )}
      {part && !draft && (
        <MaterialList
          part={part}
          density={density}
          active={active ?? named ?? null}
          onActive={setActive}
          onTaken={onClose}
          onDraft={(material) => setDraft(draftOf(material))}
        />
      )}
    </Dialog>,
    document.body,
  );
}

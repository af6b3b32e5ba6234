import { useMemo } from 'react';
import { partText } from '../../messages';
import { useAppState, useSession } from '../../ui/session';
import { FieldFold } from '../fields/FieldFold';
import { FieldPanel } from '../fields/FieldGroup';
import { useFollowed } from '../fields/useFollowed';
import { OptionalNumberRow } from '../measured/OptionalNumberRow';
import { DragTable } from './DragTable';
import { NoteLines } from './NoteLines';
import { PolarFileRow } from './PolarFileRow';
import { SwitchRow } from './SwitchRow';
import {
  changedIn,
  type SectionGroup,
  type SectionRun,
  sectionGroups,
  writtenIn,
} from './sectionRows';
import './conditions.css';

/** The numbers that belong to no part: rotor and day, slider, servo, friction, air, how the blade is held. */
export function ConditionFields() {
  const session = useSession();
  const groups = useMemo(() => sectionGroups(session), [session]);
  return groups.map((group) => <Group key={`${group.section} ${group.title}`} group={group} />);
}

function Group({ group }: { readonly group: SectionGroup }) {
  const session = useSession();
  const changed = Number(useFollowed(() => String(changedIn(session, group))));
  const first = group.title === 'rotor';
  return (
    <FieldFold
      kind="conditions"
      group={group.title}
      title={partText(`conditions.${group.title}`, group.title)}
      // The rotor's own numbers are always wanted.
      changed={first ? Math.max(1, changed) : 0}
    >
      {group.runs.map((run) => (
        <Run key={keyOf(run)} run={run} group={group} />
      ))}
      {group.title === 'friction' && <DragTable />}
      {group.title === 'air' && <PolarFileRow />}
      <NoteLines topic={group.title} />
    </FieldFold>
  );
}

function keyOf(run: SectionRun): string {
  return run.kind === 'fields' ? run.fields.map((field) => field.key).join() : run.field.key;
}

function Run({ run, group }: { readonly run: SectionRun; readonly group: SectionGroup }) {
  if (run.kind === 'fields') return <FieldPanel fields={run.fields} partId={null} />;
  if (run.kind === 'switch') return <SwitchRow field={run.field} />;
  return <OptionalRow run={run} group={group} />;
}

function OptionalRow(props: {
  readonly run: Extract<SectionRun, { kind: 'optional' }>;
  readonly group: SectionGroup;
}) {
  const { run, group } = props;
  const session = useSession();
  // As soon as it is known: an arrow key steps from here.
  const value = useAppState(() => writtenIn(session, group.section, run.field.key));
  return (
    <OptionalNumberRow
      field={run.field}
      value={value === undefined ? undefined : Number(value)}
      placeholder={run.none}
    />
  );
}

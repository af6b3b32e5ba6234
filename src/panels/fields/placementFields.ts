import { socketNamed } from '../../design/check';
import type { Mount, Part } from '../../design/design';
import { POSITION_LIMITS, TURN_LIMITS } from '../../design/limits';
import { partText, t } from '../../messages';
import { isKeepOut, type Socket } from '../../parts/contract';
import { partType } from '../../parts/registry';
import { placesFor, seatKey } from '../../state/places';
import type { Session } from '../../state/session';
import {
  type ChoiceField,
  currentPart,
  type Field,
  NO_POSE,
  type NumberField,
  refusalIn,
  vectorField,
} from './fieldModel';

const FREE = 'free';
const AXES = ['x', 'y', 'z'] as const;

/** Where a part sits: on which socket and how far along it, or free in the grip frame by position and rotation. */
export function placementFields(session: Session, part: Part): Field[] {
  const seat = seatField(session, part);
  return part.socket
    ? [seat, ...mountFields(session, part, part.socket)]
    : [seat, ...poseFields(session, part)];
}

function seatField(session: Session, part: Part): ChoiceField {
  const { store, actions } = session;
  const places = placesFor(store.getState().design, part.kind, part.id).map(
    ({ part: parent, socket }) => ({
      value: seatKey({ part: parent.id, name: socket.name }),
      label: t('fields.seatOn', { part: parent.name, socket: socketLabel(parent, socket) }),
      mount: { part: parent.id, name: socket.name },
    }),
  );
  return {
    kind: 'choice',
    key: 'seat',
    wide: true,
    label: t('fields.seat'),
    help: t('fields.seatHelp'),
    options: [
      ...places,
      { value: FREE, label: t(inRotor(part) ? 'fields.seatFreeRotor' : 'fields.seatFree') },
    ],
    read() {
      const { socket } = currentPart(session, part);
      return socket ? seatKey(socket) : FREE;
    },
    commit(value) {
      if (value === FREE) return refusalIn(actions.freePart(part.id));
      const place = places.find((one) => one.value === value);
      return place ? refusalIn(actions.placePart(part.id, { socket: place.mount })) : null;
    },
  };
}

function mountFields(session: Session, part: Part, mount: Mount): Field[] {
  const { actions } = session;
  const socketNow = () => {
    const seat = currentPart(session, part).socket ?? mount;
    return socketNamed(session.live.model.placed(seat.part)?.sockets ?? [], seat.name);
  };
  const [low, high] = socketNow()?.offsetRangeMm ?? [0, 0];
  const turn: NumberField = {
    kind: 'number',
    key: 'turnDeg',
    label: t('fields.turn'),
    help: t('fields.turnHelp'),
    ...TURN_LIMITS,
    unit: 'deg',
    step: 1,
    read: () => currentPart(session, part).socket?.turnDeg ?? 0,
    commit: (value) => refusalIn(actions.setMount(part.id, { turnDeg: value })),
  };
  if (low === high) return [turn];
  const offset: NumberField = {
    kind: 'number',
    key: 'offsetMm',
    label: t('fields.offset'),
    help: t('fields.offsetHelp'),
    unit: 'mm',
    min: low,
    max: high,
    step: 0.1,
    read: () => currentPart(session, part).socket?.offsetMm ?? socketNow()?.defaultOffsetMm ?? 0,
    commit: (value) => refusalIn(actions.setMount(part.id, { offsetMm: value })),
  };
  return [offset, turn];
}

function poseFields(session: Session, part: Part): Field[] {
  const { actions } = session;
  const pose = () => currentPart(session, part).pose ?? NO_POSE;
  const position = { ...POSITION_LIMITS, unit: 'mm', step: 0.1 } as const;
  const rotation = { ...TURN_LIMITS, unit: 'deg', step: 1 } as const;
  return [
    vectorField(
      'positionMm',
      t('fields.position'),
      t(inRotor(part) ? 'fields.positionHelpRotor' : 'fields.positionHelp'),
      AXES,
      position,
      {
        read: () => pose().positionMm,
        commit: (positionMm) => refusalIn(actions.setPose(part.id, { ...pose(), positionMm })),
      },
    ),
    vectorField(
      'rotationDeg',
      t('fields.rotation'),
      t(inRotor(part) ? 'fields.rotationHelpRotor' : 'fields.rotationHelp'),
      AXES,
      rotation,
      {
        read: () => pose().rotationDeg,
        commit: (rotationDeg) => refusalIn(actions.setPose(part.id, { ...pose(), rotationDeg })),
      },
    ),
  ];
}

/** A keep-out does not turn with the grip. */
function inRotor(part: Part): boolean {
  return isKeepOut(partType(part.kind));
}

function socketLabel(part: Part, socket: Socket): string {
  return partText(`part.${part.kind}.socket.${socket.name}`, socket.label);
}

import { metresFromMm } from '../../engine/units';
import { definePart, type Handle, type Socket } from '../contract';
import { gripSockets } from '../gripSeats';
import { scaledBody } from './body';
import { filePose, meshDataOf, writtenMesh } from './meshParameters';
import { type MeshBodyValues, meshBodyParameters } from './parameters';

/**
 * A body read from a mesh file: weighed by the exact moments of the mesh, drawn by a picture that may be coarser. The
 * part frame is the file's frame, turned and shifted by `turnDeg` and `shiftMm`; in the role of a grip it is the grip
 * frame, so that stations count along x from the shaft. Its surface is not solved for seats: their places are given.
 */
export const meshBody = definePart({
  kind: 'meshBody',
  label: 'Body from a mesh',
  help: 'A grip or any part from a mesh file, weighed from its closed surface.',
  parameters: meshBodyParameters,
  mates: [],
  solids: (values) => [
    {
      name: 'body',
      density: values.densityKgM3,
      shape: { shape: 'known', ...scaledBody(meshDataOf(values), values.unit) },
      pose: filePose(values),
    },
  ],
  sockets: (values) => (values.role === 'grip' ? seats(values) : []),
  handles: (values) => (values.role === 'grip' ? gripHandles(values) : []),
  problems: (values) => meshDataOf(values).problems,
  bodyPose: filePose,
  recast: (written) => ({
    kind: 'keepOut',
    form: 'mesh',
    fixedTo: 'case',
    ...writtenMesh(written),
  }),
  fromFile: true,
  finish: 'neutral',
});

function seats(values: MeshBodyValues): Socket[] {
  return gripSockets({
    arm: metresFromMm(values.armSeatMm),
    bolt: metresFromMm(values.boltStationMm),
    above: metresFromMm(values.boltSeatHeightMm),
    below: metresFromMm(values.nutSeatDepthMm),
    barrelMm: [0, values.boltStationMm],
  });
}

function gripHandles(values: MeshBodyValues): Handle<keyof MeshBodyValues>[] {
  const bolt = metresFromMm(values.boltStationMm);
  const face = metresFromMm(values.boltSeatHeightMm);
  return [
    {
      kind: 'linear',
      parameter: 'boltStationMm',
      position: [bolt, 0, 0],
      direction: [1, 0, 0],
      perMm: 1,
    },
    {
      kind: 'linear',
      parameter: 'boltSeatHeightMm',
      position: [bolt, 0, face],
      direction: [0, 0, 1],
      perMm: 1,
    },
  ];
}

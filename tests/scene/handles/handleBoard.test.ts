import { expect, it } from 'vitest';
import { HandleBoard, type PosedHandle } from '../../../src/scene/handles/handleBoard';

const handle = (key: string) => ({ spec: { key }, spot: null }) as unknown as PosedHandle;

it('a handle that was posed anew is grabbed where it is seen until the next picture: while the grip moves there is one all the time', () => {
  const board = new HandleBoard();
  board.take([handle('bolt/lengthMm'), handle('pitch/pitchDeg')]);
  expect(board.nearest(100, 50)).toBeNull();
  board.handles[0].spot = [100, 50];
  const now = handle('bolt/lengthMm');
  board.take([now, handle('bolt/headDiameterMm')]);
  expect(board.nearest(110, 50)).toBe(now);
  expect(board.handles[1].spot).toBeNull();
  board.take([]);
  expect(board.nearest(100, 50)).toBeNull();
});

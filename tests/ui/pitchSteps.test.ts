import { describe, expect, it } from 'vitest';
import { pitchAfterKey, snapPitch } from '../../src/ui/pitchSteps';

const plain = { shiftKey: false, altKey: false, ctrlKey: false, metaKey: false };

describe('snapping the dragged pitch', () => {
  it.each([
    [12.3456, plain, 12.3],
    [12.3456, { ...plain, shiftKey: true }, 12],
    [12.3456, { ...plain, altKey: true }, 12.35],
    [93, plain, 90],
    [-120, plain, -90],
  ])('takes %d to a round value and keeps it in the range', (raw, modifiers, expected) => {
    expect(snapPitch(raw, modifiers)).toBe(expected);
  });
});

describe('keys on the pitch pointer', () => {
  const stops = [-88.2, 1.8];

  it.each([
    ['ArrowUp', plain, 6],
    ['ArrowRight', plain, 6],
    ['ArrowDown', plain, 4],
    ['ArrowLeft', { ...plain, shiftKey: true }, 0],
    ['ArrowUp', { ...plain, altKey: true }, 5.1],
    ['PageUp', plain, 15],
    ['PageDown', plain, -5],
    ['Home', plain, -90],
    ['End', plain, 90],
    ['ArrowDown', { ...plain, ctrlKey: true }, 1.8],
    ['ArrowUp', { ...plain, ctrlKey: true }, 5],
  ])('%s moves it from 5 degrees', (key, modifiers, expected) => {
    expect(pitchAfterKey({ key, ...modifiers }, 5, stops)).toBe(expected);
  });

  it('goes on to the next stop from a stop', () => {
    expect(pitchAfterKey({ key: 'ArrowDown', ...plain, ctrlKey: true }, 1.8, stops)).toBe(-88.2);
  });

  it('stops at the ends', () => {
    expect(pitchAfterKey({ key: 'PageUp', ...plain }, 85, stops)).toBe(90);
  });

  it('leaves other keys alone', () => {
    expect(pitchAfterKey({ key: 'Tab', ...plain }, 5, stops)).toBeNull();
  });

  it('leaves no dust of tenths behind', () => {
    const alt = { ...plain, altKey: true };
    let pitch = 0;
    for (let i = 0; i < 3; i++)
      pitch = pitchAfterKey({ key: 'ArrowUp', ...alt }, pitch, []) as number;
    expect(pitch).toBe(0.3);
  });
});

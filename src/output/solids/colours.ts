import type { PartType } from '../../parts/contract';

/** Colour of a finish in a file, sRGB, 0 to 1: those of the stage on the light page. */
export const FINISH_COLOURS: Readonly<
  Record<PartType['finish'], readonly [number, number, number]>
> = {
  metal: [0.553, 0.588, 0.576],
  plastic: [0.29, 0.314, 0.302],
  composite: [0.176, 0.196, 0.188],
  neutral: [0.663, 0.694, 0.678],
};

export function hexColour(finish: PartType['finish']): string {
  const digits = FINISH_COLOURS[finish].map((share) =>
    Math.round(255 * share)
      .toString(16)
      .padStart(2, '0'),
  );
  return `#${digits.join('').toUpperCase()}`;
}

/** sRGB to linear light (IEC 61966-2-1): what GLB asks for. */
export function linearColour(finish: PartType['finish']): number[] {
  return FINISH_COLOURS[finish].map((share) =>
    share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4,
  );
}

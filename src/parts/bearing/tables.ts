/**
 * Small bearings: bore, outer diameter, width mm; dynamic rating C, static rating C0 N; mass g. Null: not printed.
 * Designations are those of the boundary dimensions. Makers' ratings for the same size differ, by up to a fifth and more.
 */
export interface BearingRow {
  readonly size: string;
  readonly dimensions: readonly [bore: number, outer: number, width: number];
  readonly ratings: readonly [dynamic: number, statical: number] | null;
  readonly massGrams: number | null;
  readonly fromMemory?: boolean;
  readonly note?: string;
}

function row(
  size: string,
  dimensions: BearingRow['dimensions'],
  ratings: BearingRow['ratings'],
  massGrams: number | null = null,
  more: Pick<BearingRow, 'fromMemory' | 'note'> = {},
): BearingRow {
  return { size, dimensions, ratings, massGrams, ...more };
}

const RECALLED = {
  fromMemory: true,
  note: 'Ratings from memory: check them against the list of whoever made it.',
} as const;

export const OPEN_SOURCE = 'open hardware data table';
export const OPEN_ROWS: readonly BearingRow[] = [
  row('618/4', [4, 9, 2.5], [423, 116], 0.7),
  row('619/4', [4, 11, 4], [624, 180], 1.7),
  row('604', [4, 12, 4], [806, 280], 2.1),
  row('624', [4, 13, 5], [936, 290], 3.1),
  row('634', [4, 16, 5], [1110, 380], 5.4),
  row('623', [3, 10, 4], [540, 180], 1.5, {
    note: 'Others list C 640 N and C0 230 N for this size.',
  }),
  row('618/5', [5, 11, 3], [468, 143], 1.2),
  row('619/5', [5, 13, 4], [884, 335], 2.5),
  row('625', [5, 16, 5], [1140, 380], 5),
  row('635', [5, 19, 6], [2340, 950], 8.5),
  row('618/6', [6, 13, 3.5], [715, 224], 2),
  row('619/6', [6, 15, 5], [884, 270], 3.9),
  row('626', [6, 19, 6], [2340, 950], 8.1),
  row('618/7', [7, 14, 3.5], [780, 260], 2.2),
  row('618/8', [8, 16, 4], [819, 300], 3),
  row('608', [8, 22, 7], [3450, 1370], 12),
  row('MR106', [6, 10, 3], [496, 218], null, RECALLED),
  row('MR126', [6, 12, 4], [715, 292], null, RECALLED),
];

export const SHIELDED_SOURCE = 'open hardware data table';
export const SHIELDED_ROWS: readonly BearingRow[] = [
  row('MR52', [2, 5, 2.5], [187, 58], null, RECALLED),
  row('MR63', [3, 6, 2.5], [208, 74], null, RECALLED),
  row('MR74', [4, 7, 2.5], [255, 107], null, RECALLED),
  row('MR84', [4, 8, 3], [395, 141], null, RECALLED),
  row('628/4', [4, 9, 3.5], [540, 180], 1),
  row('684', [4, 9, 4], [540, 180], 1.3, {
    note: 'Also listed as 638/4; others give C 640 N and C0 225 N (memory).',
  }),
  row('MR85', [5, 8, 2.5], [218, 90], null, RECALLED),
  row('MR95', [5, 9, 3], [430, 168], null, RECALLED),
  row('MR105', [5, 10, 4], [430, 168], null, {
    note: "A seller's page, which prints the two ratings the wrong way round.",
  }),
  row('628/5', [5, 11, 4], [640, 260], 1.4),
  row('685', [5, 11, 5], [640, 260], 1.6, {
    note: 'Also listed as 638/5; others give C 715 N and C0 281 N (memory).',
  }),
  row('686', [6, 13, 5], [880, 350], 2.6, { note: 'Also listed as 628/6.' }),
  row('628/7', [7, 14, 5], [956, 400], 3.1),
  row('688', [8, 16, 5], [1330, 570], 3.6, { note: 'Also listed as 628/8.' }),
  row('638/8', [8, 16, 6], [1330, 570], 4.3),
];

export const THRUST_SOURCE =
  "makers' and sellers' pages; ratings printed in kgf, masses of two sizes without ratings";
export const THRUST_ROWS: readonly BearingRow[] = [
  row('F2.5-6M', [2.5, 6, 3], [863, 775]),
  row('F3-8M', [3, 8, 3.5], [863, 775], null, {
    note: 'Printed with the ratings of F2.5-6M, perhaps a copy; another list has 8.5 mm outside.',
  }),
  row('F4-9M', [4, 9, 4], [922, 1157]),
  row('F4-10M', [4, 10, 4], [804, 775]),
  row('F5-10M', [5, 10, 4], [1030, 1157]),
  row('F5-12M', [5, 12, 4], [912, 1030]),
  row('F6-12M', [6, 12, 4.5], [1579, 1834]),
  row('5 x 12 x 4', [5, 12, 4], null, 2.6, { note: 'Without ratings.' }),
  row('6 x 14 x 5', [6, 14, 5], null, 4.5, { note: 'Without ratings.' }),
];

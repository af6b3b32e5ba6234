import type { Design } from '../../design/design';
import type { HeadModel } from '../../design/headModel';
import type { ToleranceAnswer } from '../../neutralise/closeness/runTolerances';
import type { HeadReading } from '../../state/reading';
import type { DisplayUnits } from '../../state/settings';
import type { StagePicture } from '../../state/stageCamera';
import type { SectionId } from './model';

/** All that a report is made of. Nothing is kept: the model that comes of it is plain data. */
export interface ReportInputs {
  readonly design: Design;
  readonly reading: HeadReading;
  readonly model: HeadModel;
  readonly units: DisplayUnits;
  /** Where the dial stands. */
  readonly pitchDeg: number;
  /** As it is to be printed, "2026-11-25". */
  readonly date: string;
  /** As the maker counts revisions; empty: the mark of the design's content alone. */
  readonly revision: string;
  /** Who it is for, an order, a remark; empty: none. */
  readonly remark: string;
  readonly picture: StagePicture | null;
  /** The last tolerance run of the session and the design that it was of; null: none. */
  readonly tolerance: { readonly design: Design; readonly answer: ToleranceAnswer } | null;
  readonly fileName: string;
  readonly link: ReportLink;
  readonly sections: ReadonlySet<SectionId>;
}

/** The link that holds the whole design: its length in characters, and itself where a link may be so long. */
export interface ReportLink {
  readonly length: number;
  readonly address: string | null;
}

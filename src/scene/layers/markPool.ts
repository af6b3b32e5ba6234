import type { EquilibriumKind } from '../../engine/feathering/equilibria';
import type { Vec3 } from '../../engine/math/vector';
import { t } from '../../messages';
import { showDegrees } from '../../state/quantities';
import type { LabelBoard, StageLabel } from '../drawing/labels';

const SHAPES: Readonly<Record<EquilibriumKind, string>> = {
  stable: 'stage-mark stage-mark-rest',
  unstable: 'stage-mark stage-mark-flee',
  tangent: 'stage-mark stage-mark-tangent',
};

interface Mark {
  readonly symbol: StageLabel;
  readonly words: StageLabel;
}

/** Circles at rest (filled), flee (hollow) and tangent angles (half filled), with their angle in words if asked for. */
export class MarkPool {
  private readonly marks: Mark[] = [];
  private used = 0;

  constructor(private readonly board: LabelBoard) {}

  begin(): void {
    this.used = 0;
  }

  /** A mark at `at` (world, mm), and its words at `wordsAt` unless null. */
  add(kind: EquilibriumKind, pitchDeg: number, at: Vec3, wordsAt: Vec3 | null): void {
    if (this.used === this.marks.length) {
      this.marks.push({
        symbol: this.board.add('stage-mark', 0),
        words: this.board.add('stage-label', 5),
      });
    }
    const { symbol, words } = this.marks[this.used++];
    if (symbol.element.className !== SHAPES[kind]) symbol.element.className = SHAPES[kind];
    symbol.put(at);
    symbol.visible = true;
    words.visible = wordsAt !== null;
    if (!wordsAt) return;
    words.put(wordsAt);
    words.text = t(`stage.mark.${kind}`, { angle: showDegrees(pitchDeg) });
  }

  end(): void {
    for (let i = this.used; i < this.marks.length; i++) {
      this.marks[i].symbol.visible = false;
      this.marks[i].words.visible = false;
    }
  }

  hide(): void {
    this.begin();
    this.end();
  }

  dispose(): void {
    for (const { symbol, words } of this.marks) {
      this.board.remove(symbol);
      this.board.remove(words);
    }
    this.marks.length = 0;
  }
}

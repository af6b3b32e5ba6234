import type { ComponentType } from 'react';
import type { TopicId } from '../../../state/help/topics';
import { FlapFigure, LeverFigure, OverCentreFigure, PlanFigure } from './control';
import { BandFigure, HillsFigure } from './rest';
import { EllipseFigure, PitchFigure, ProductFigure, SpreadFigure } from './spread';

/** The entries that a drawing says more of than words. */
export const FIGURES: Partial<Readonly<Record<TopicId, ComponentType>>> = {
  pitch: PitchFigure,
  leadingEdge: PitchFigure,
  difference: SpreadFigure,
  share: SpreadFigure,
  counterweight: SpreadFigure,
  product: ProductFigure,
  spreadEllipse: EllipseFigure,
  neutral: EllipseFigure,
  pitchArm: LeverFigure,
  pushRodForce: LeverFigure,
  overCentre: OverCentreFigure,
  restAngle: HillsFigure,
  fleeAngle: HillsFigure,
  energy: HillsFigure,
  equilibrium: HillsFigure,
  holdingBand: BandFigure,
  friction: BandFigure,
  station: PlanFigure,
  chord: PlanFigure,
  span: PlanFigure,
  featheringAxis: PlanFigure,
  quarterChord: PlanFigure,
  flapMoment: FlapFigure,
};

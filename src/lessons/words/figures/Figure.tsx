import type { ReactNode } from 'react';
import { radiansFromDegrees } from '../../../engine/units';
import { type HelpTextKey, sayHelp } from '../../../state/help/helpText';

/** Width of every figure in its own units. */
const WIDTH = 240;

/** A small drawing of the glossary: lines from the page's colours, a sentence for who cannot see it. */
export function Figure(props: {
  readonly text: HelpTextKey;
  readonly height?: number;
  readonly children: ReactNode;
}) {
  return (
    <svg
      className="words-figure"
      viewBox={`0 0 ${WIDTH} ${props.height ?? 110}`}
      role="img"
      aria-label={sayHelp(props.text)}
    >
      {props.children}
    </svg>
  );
}

/** A line with a small head at its end. */
export function Arrow(props: {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly tone?: string;
}) {
  const [x1, y1] = props.from;
  const [x2, y2] = props.to;
  const way = Math.atan2(y2 - y1, x2 - x1);
  const side = (turn: number) =>
    `${(x2 - 7 * Math.cos(way + turn)).toFixed(1)} ${(y2 - 7 * Math.sin(way + turn)).toFixed(1)}`;
  return (
    <path
      className={`words-line ${props.tone ?? ''}`}
      d={`M${x1} ${y1}L${x2} ${y2}M${side(0.45)}L${x2} ${y2}L${side(-0.45)}`}
    />
  );
}

/** An arc about a centre from one angle to another, degrees, counted up from the right. */
export function arc(x: number, y: number, radius: number, fromDeg: number, toDeg: number): string {
  const at = (deg: number) => {
    const angle = radiansFromDegrees(deg);
    return `${(x + radius * Math.cos(angle)).toFixed(1)} ${(y - radius * Math.sin(angle)).toFixed(1)}`;
  };
  return `M${at(fromDeg)}A${radius} ${radius} 0 0 ${toDeg > fromDeg ? 0 : 1} ${at(toDeg)}`;
}

/** A blade's section with its leading edge to the right, turned up by an angle (degrees) about its quarter chord. */
export function Section(props: {
  readonly x: number;
  readonly y: number;
  readonly half: number;
  readonly turnDeg?: number;
  readonly className?: string;
}) {
  const { x, y, half } = props;
  const thick = half * 0.16;
  return (
    <path
      className={props.className ?? 'words-body'}
      transform={`rotate(${-(props.turnDeg ?? 0)} ${x} ${y})`}
      d={`M${x - half} ${y}C${x - half / 3} ${y - thick} ${x + half * 0.7} ${y - 1.5 * thick} ${x + half} ${y}C${x + half * 0.7} ${y + 1.5 * thick} ${x - half / 3} ${y + thick} ${x - half} ${y}Z`}
    />
  );
}

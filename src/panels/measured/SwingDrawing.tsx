import type { ReactNode } from 'react';
import type { SwingAxis } from '../../design/measured';
import { t } from '../../messages';

/** The upright line in the middle of the drawings, and the strings either side of it. */
const MIDDLE = 130;
const LEFT = 70;
const RIGHT = 190;
const CEILING = 14;

/** How a part hangs on two strings to be timed about one axis. */
export function SwingDrawing(props: { readonly about: SwingAxis }) {
  const { about } = props;
  const held = { span: 84, chord: 118, thickness: 142 }[about];
  return (
    <svg
      className="swing-drawing"
      viewBox="0 0 260 206"
      role="img"
      aria-label={t(`measured.drawing.${about}`)}
    >
      <Ceiling />
      <line className="swing-string" x1={LEFT} y1={CEILING} x2={LEFT} y2={held} />
      <line className="swing-string" x1={RIGHT} y1={CEILING} x2={RIGHT} y2={held} />
      {BODIES[about]()}
      <line className="swing-axis" x1={MIDDLE} y1={24} x2={MIDDLE} y2={202} />
      <Centre x={MIDDLE} y={{ span: 132, chord: 139, thickness: 146 }[about]} />
      <Turn y={{ span: 182, chord: 178, thickness: 178 }[about]} />
      <Distance from={LEFT} to={RIGHT} y={42} label={t('measured.drawing.spacing')} />
      <Height from={CEILING} to={held} x={222} label={t('measured.drawing.length')} />
    </svg>
  );
}

const BODIES: Readonly<Record<SwingAxis, () => ReactNode>> = {
  span: () => (
    <>
      <rect className="swing-cradle" x={LEFT - 4} y={84} width={RIGHT - LEFT + 8} height={5} />
      <text className="swing-text" x={RIGHT - 2} y={101} textAnchor="end">
        {t('measured.drawing.cradle')}
      </text>
      <path className="swing-body" d="M112 89 h38 v80 h-38 z" />
      <line className="swing-nose" x1={112} y1={89} x2={112} y2={169} />
      <text className="swing-text" x={107} y={150} textAnchor="end">
        {t('measured.drawing.edge')}
      </text>
      <circle className="swing-hole" cx={123} cy={97} r={3} />
    </>
  ),
  chord: () => (
    <>
      <path className="swing-body" d="M36 118 h188 v40 h-188 z" />
      <line className="swing-nose" x1={36} y1={118} x2={224} y2={118} />
      <circle className="swing-hole" cx={46} cy={130} r={3} />
    </>
  ),
  thickness: () => (
    <>
      <path className="swing-body" d="M24 156 l24 -20 h188 l-24 20 z" />
      <path className="swing-side" d="M24 156 h188 v4 h-188 z M212 156 l24 -20 v4 l-24 20 z" />
      <line className="swing-nose" x1={48} y1={136} x2={236} y2={136} />
      <ellipse className="swing-hole" cx={52} cy={144} rx={4} ry={2.4} />
      <path className="swing-string" d={`M${LEFT} 142 l-14 15 M${LEFT} 142 l8 -6`} />
      <path className="swing-string" d={`M${RIGHT} 142 l-14 15 M${RIGHT} 142 l8 -6`} />
    </>
  ),
};

function Ceiling() {
  const strokes = Array.from({ length: 17 }, (_, i) => `M${48 + 10 * i} ${CEILING} l8 -8`);
  return (
    <>
      <path className="swing-thin" d={strokes.join(' ')} />
      <line className="swing-line" x1={44} y1={CEILING} x2={218} y2={CEILING} />
    </>
  );
}

/** Centre of mass: a circle in quarters. */
function Centre(props: { readonly x: number; readonly y: number }) {
  const { x, y } = props;
  return (
    <>
      <circle className="swing-centre" cx={x} cy={y} r={6} />
      <path
        className="swing-centre-fill"
        d={`M${x} ${y} V${y - 6} A6 6 0 0 1 ${x + 6} ${y} z M${x} ${y} V${y + 6} A6 6 0 0 1 ${x - 6} ${y} z`}
      />
    </>
  );
}

/** An arrow round the upright line, both ways. */
function Turn(props: { readonly y: number }) {
  const { y } = props;
  return (
    <path
      className="swing-turn"
      d={`M${MIDDLE - 22} ${y} a22 7 0 1 0 44 0 m-5 3 l5 -4 l3 6 M${MIDDLE - 25} ${y + 5} l3 -6 l5 4`}
    />
  );
}

function Distance(props: {
  readonly from: number;
  readonly to: number;
  readonly y: number;
  readonly label: string;
}) {
  const { from, to, y } = props;
  return (
    <>
      <path
        className="swing-dimension"
        d={`M${from} ${y} H${to} M${from + 6} ${y - 3} l-6 3 l6 3 M${to - 6} ${y - 3} l6 3 l-6 3`}
      />
      <text className="swing-text" x={(from + MIDDLE) / 2} y={y - 5} textAnchor="middle">
        {props.label}
      </text>
    </>
  );
}

function Height(props: {
  readonly from: number;
  readonly to: number;
  readonly x: number;
  readonly label: string;
}) {
  const { from, to, x } = props;
  const middle = (from + to) / 2;
  return (
    <>
      <path
        className="swing-dimension"
        d={`M${RIGHT + 4} ${to} H${x + 6} M${x} ${from} V${to} M${x - 3} ${from + 6} l3 -6 l3 6 M${x - 3} ${to - 6} l3 6 l3 -6`}
      />
      <text
        className="swing-text"
        x={x + 10}
        y={middle}
        textAnchor="middle"
        transform={`rotate(90 ${x + 10} ${middle})`}
      >
        {props.label}
      </text>
    </>
  );
}

/** How a balance point is found. */
export function BalanceDrawing() {
  return (
    <svg
      className="swing-drawing"
      viewBox="0 0 260 130"
      role="img"
      aria-label={t('measured.drawing.balance')}
    >
      <path className="swing-body" d="M36 50 h188 v8 h-188 z" />
      <path className="swing-cradle" d="M130 58 l16 40 h-32 z" />
      <line className="swing-line" x1={60} y1={98} x2={200} y2={98} />
      <path className="swing-axis" d="M50 28 V72 M130 28 V60" />
      <path className="swing-dimension" d="M50 36 H130 M56 33 l-6 3 l6 3 M124 33 l6 3 l-6 3" />
      <text className="swing-text" x={90} y={31} textAnchor="middle">
        {t('measured.drawing.distance')}
      </text>
      <text className="swing-text" x={50} y={84} textAnchor="middle">
        {t('measured.drawing.bolt')}
      </text>
      <path className="swing-turn" d="M30 72 a40 20 0 0 1 4 -26 m-6 4 l6 -5 l2 8" />
    </svg>
  );
}

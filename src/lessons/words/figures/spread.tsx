import { sayHelp } from '../../../state/help/helpText';
import { Arrow, arc, Figure, Section } from './Figure';

/** Seen from the tip, leading edge to the right: the plane of rotation lies across. */
function Plane(props: { readonly x1: number; readonly x2: number; readonly y: number }) {
  return <path className="words-thin" d={`M${props.x1} ${props.y}H${props.x2}`} />;
}

export function PitchFigure() {
  return (
    <Figure text="help.figure.pitch">
      <Plane x1={16} x2={224} y={68} />
      <Section x={104} y={68} half={76} turnDeg={18} />
      <circle className="words-axis" cx={104} cy={68} r={3} />
      <path className="words-line words-accent" d={arc(104, 68, 96, 0, 18)} />
      <text x={206} y={56}>
        {'\u03b8'}
      </text>
      <text x={224} y={84} textAnchor="end" className="words-small">
        {sayHelp('help.label.planeOfRotation')}
      </text>
      <text x={150} y={20} className="words-small">
        {sayHelp('help.label.leadingEdge')}
      </text>
    </Figure>
  );
}

export function SpreadFigure() {
  return (
    <Figure text="help.figure.spread">
      <Plane x1={10} x2={114} y={56} />
      <Section x={62} y={56} half={48} className="words-body words-centres" />
      <Arrow from={[96, 30]} to={[96, 50]} tone="words-centres-line" />
      <Arrow from={[28, 82]} to={[28, 62]} tone="words-centres-line" />
      <text x={62} y={104} textAnchor="middle">
        {sayHelp('help.label.centres')}
      </text>
      <Plane x1={132} x2={230} y={56} />
      <path className="words-body words-flees" d="M177 12H185V26H183V86H179V26H177Z" />
      <Arrow from={[192, 18]} to={[212, 26]} tone="words-flees-line" />
      <Arrow from={[170, 88]} to={[150, 80]} tone="words-flees-line" />
      <text x={181} y={104} textAnchor="middle">
        {sayHelp('help.label.flees')}
      </text>
    </Figure>
  );
}

export function ProductFigure() {
  return (
    <Figure text="help.figure.product">
      <Plane x1={8} x2={112} y={60} />
      <Section x={54} y={60} half={40} />
      <circle className="words-dot" cx={90} cy={40} r={7} />
      <path className="words-dash" d="M18 78L98 34" />
      <text x={56} y={102} textAnchor="middle" className="words-small">
        {sayHelp('help.label.atFlatPitch')}
      </text>
      <Plane x1={128} x2={234} y={60} />
      <g transform="rotate(26 176 60)">
        <Section x={176} y={60} half={40} />
        <circle className="words-dot" cx={212} cy={40} r={7} />
        <path className="words-dash" d="M140 80L220 36" />
      </g>
      <text x={180} y={102} textAnchor="middle" className="words-small">
        {sayHelp('help.label.whereItRests')}
      </text>
    </Figure>
  );
}

const ELLIPSES = [
  { x: 44, rx: 34, ry: 14, tone: 'words-centres', name: 'centres' },
  { x: 122, rx: 26, ry: 26, tone: 'words-holds', name: 'neutral' },
  { x: 198, rx: 14, ry: 34, tone: 'words-flees', name: 'flees' },
] as const;

export function EllipseFigure() {
  return (
    <Figure text="help.figure.ellipse">
      <Plane x1={4} x2={236} y={46} />
      {ELLIPSES.map(({ x, rx, ry, tone, name }) => (
        <g key={name}>
          <ellipse className={`words-body ${tone}`} cx={x} cy={46} rx={rx} ry={ry} />
          <circle className="words-axis" cx={x} cy={46} r={2.5} />
          <text x={x} y={104} textAnchor="middle">
            {sayHelp(`help.label.${name}`)}
          </text>
        </g>
      ))}
    </Figure>
  );
}

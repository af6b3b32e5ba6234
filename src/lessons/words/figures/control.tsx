import { sayHelp } from '../../../state/help/helpText';
import { Arrow, Figure, Section } from './Figure';

export function LeverFigure() {
  return (
    <Figure text="help.figure.lever" height={120}>
      <Section x={92} y={44} half={64} turnDeg={14} />
      <path className="words-rod" d="M92 44L168 28" />
      <circle className="words-axis" cx={92} cy={44} r={3} />
      <circle className="words-dot" cx={168} cy={28} r={5} />
      <path className="words-rod" d="M168 28L206 104" />
      <circle className="words-dot" cx={206} cy={104} r={5} />
      <path className="words-dash" d="M168 28L156 4" />
      <path className="words-line words-accent" d="M92 44L159.2 10.4" />
      <Arrow from={[204, 48]} to={[220, 80]} tone="words-accent" />
      <text x={112} y={24}>
        h
      </text>
      <text x={224} y={66}>
        T
      </text>
    </Figure>
  );
}

export function OverCentreFigure() {
  return (
    <Figure text="help.figure.overCentre" height={120}>
      <Section x={112} y={40} half={40} turnDeg={62} />
      <path className="words-dash" d="M112 8V116" />
      <path className="words-rod" d="M112 40V74" />
      <path className="words-rod" d="M112 74V112" />
      <circle className="words-axis" cx={112} cy={40} r={3} />
      <circle className="words-dot" cx={112} cy={74} r={5} />
      <circle className="words-dot" cx={112} cy={112} r={5} />
      <text x={124} y={78}>
        {sayHelp('help.label.ball')}
      </text>
      <text x={124} y={104}>
        {sayHelp('help.label.pushRod')}
      </text>
      <text x={168} y={44}>
        h = 0
      </text>
    </Figure>
  );
}

export function PlanFigure() {
  return (
    <Figure text="help.figure.plan" height={124}>
      <circle className="words-body" cx={24} cy={66} r={9} />
      <path className="words-dash" d="M6 66H236" />
      <path className="words-body" d="M40 60H92V72H40Z" />
      <path className="words-body words-centres" d="M84 52H228V92H92Z" />
      <circle className="words-dot" cx={92} cy={66} r={4} />
      <path className="words-dash" d="M92 62H228" />
      <path className="words-thin" d="M24 78V112M92 78V112M24 106H92" />
      <text x={58} y={102} textAnchor="middle" className="words-small">
        {sayHelp('help.label.station')}
      </text>
      <text x={150} y={44} textAnchor="middle" className="words-small">
        {sayHelp('help.label.leadingEdge')}
      </text>
      <path className="words-line" d="M234 52V92M230 52H238M230 92H238" />
      <text x={226} y={108} textAnchor="end" className="words-small">
        {sayHelp('help.label.chord')}
      </text>
      <text x={10} y={46} className="words-small">
        {sayHelp('help.label.shaft')}
      </text>
      <text x={160} y={79} textAnchor="middle" className="words-small">
        {sayHelp('help.label.featheringAxis')}
      </text>
    </Figure>
  );
}

export function FlapFigure() {
  return (
    <Figure text="help.figure.flap" height={120}>
      <path className="words-dash" d="M28 4V116" />
      <path className="words-thin" d="M28 60H236" />
      <path className="words-body" d="M36 56H160V64H36Z" />
      <path className="words-line" d="M124 22V98" />
      <circle className="words-dot" cx={124} cy={22} r={6} />
      <circle className="words-dot" cx={124} cy={98} r={6} />
      <Arrow from={[132, 22]} to={[188, 22]} tone="words-pull" />
      <Arrow from={[132, 98]} to={[188, 98]} tone="words-pull" />
      <Arrow from={[212, 54]} to={[212, 20]} tone="words-accent" />
      <text x={192} y={14} textAnchor="end" className="words-small">
        {sayHelp('help.label.bendsTheTipDown')}
      </text>
      <text x={192} y={114} textAnchor="end" className="words-small">
        {sayHelp('help.label.bendsItUp')}
      </text>
      <text x={202} y={76} className="words-small">
        {sayHelp('help.label.thrust')}
      </text>
    </Figure>
  );
}

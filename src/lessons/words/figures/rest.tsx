import { sayHelp } from '../../../state/help/helpText';
import { Figure } from './Figure';

/** A wave across the figure: y about a middle, one and a half hollows. */
function wave(middle: number, size: number, phase: number): string {
  const points = Array.from({ length: 57 }, (_, i) => {
    const x = 8 + 4 * i;
    return `${x} ${(middle + size * Math.cos((x / 112) * 2 * Math.PI + phase)).toFixed(1)}`;
  });
  return `M${points.join('L')}`;
}

export function HillsFigure() {
  return (
    <Figure text="help.figure.hills">
      <path className="words-line" d={wave(56, 26, Math.PI)} />
      {/* Hollows where the wave is lowest on the page, tops where it is highest. */}
      <circle className="words-rest" cx={56} cy={74} r={7} />
      <circle className="words-flee" cx={112} cy={22} r={7} />
      <circle className="words-rest" cx={168} cy={74} r={7} />
      <text x={56} y={104} textAnchor="middle">
        {sayHelp('help.label.rests')}
      </text>
      <text x={128} y={16}>
        {sayHelp('help.label.flees')}
      </text>
      <text x={236} y={104} textAnchor="end" className="words-small">
        {sayHelp('help.label.pitch')}
      </text>
    </Figure>
  );
}

export function BandFigure() {
  return (
    <Figure text="help.figure.band">
      <path className="words-band" d="M8 40H232V70H8Z" />
      <path className="words-thin" d="M8 55H236" />
      <path className="words-dash" d="M8 40H232M8 70H232" />
      <path className="words-line" d="M24 8C70 20 84 40 118 55S176 92 216 102" />
      <path className="words-holding" d="M93 55H143" />
      <circle className="words-rest" cx={118} cy={55} r={5} />
      <text x={118} y={90} textAnchor="middle">
        {sayHelp('help.label.held')}
      </text>
      <text x={234} y={34} textAnchor="end" className="words-small">
        {sayHelp('help.label.friction')}
      </text>
      <text x={60} y={14} className="words-small">
        {sayHelp('help.label.moment')}
      </text>
    </Figure>
  );
}

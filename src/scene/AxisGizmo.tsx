import { useEffect, useRef } from 'react';
import { Matrix4, Vector3 } from 'three';
import { t } from '../messages';
import { setValues } from '../ui/drawn/svg';
import { type StageEye, useStageKit } from './stageKit';

/** Length of an axis seen square on, px; the picture is centred on (0, 0). */
const ARM = 24;
const AXES = [
  { key: 'stage.axis.x', way: new Vector3(1, 0, 0) },
  { key: 'stage.axis.y', way: new Vector3(0, 1, 0) },
  { key: 'stage.axis.z', way: new Vector3(0, 0, 1) },
] as const;
/** An axis that points at the eye has no room for its name. */
const TOO_SHORT = 0.22;

/** The rotor frame's directions in the corner, turning with the camera: which way is outboard, leading, thrust. */
export function AxisGizmo() {
  const kit = useStageKit();
  const picture = useRef<SVGSVGElement>(null);

  useEffect(() => {
    const ahead = new Vector3();
    const drawn = new Matrix4().makeScale(Number.NaN, 1, 1);
    function draw(eye: StageEye): void {
      const svg = picture.current;
      const { matrixWorldInverse } = eye.camera;
      if (!svg || drawn.equals(matrixWorldInverse)) return;
      drawn.copy(matrixWorldInverse);
      AXES.forEach(({ way }, i) => {
        ahead.copy(way).transformDirection(matrixWorldInverse);
        const x = ahead.x * ARM;
        const y = -ahead.y * ARM;
        const group = svg.children[i];
        const [line, words] = group.children;
        setValues(line, { x2: x.toFixed(1), y2: y.toFixed(1) });
        const far = 1 + 9 / ARM;
        const side = ahead.x < -0.35 ? 'end' : ahead.x > 0.35 ? 'start' : 'middle';
        const drop = side === 'middle' && y > 0 ? 9 : 4;
        setValues(words, {
          x: (x * far).toFixed(1),
          y: (y * far + drop).toFixed(1),
          'text-anchor': side,
        });
        const short = Math.hypot(ahead.x, ahead.y) < TOO_SHORT;
        setValues(group, { visibility: short ? 'hidden' : 'visible' });
      });
    }
    kit.frameTasks.add(draw);
    return () => {
      kit.frameTasks.delete(draw);
    };
  }, [kit]);

  return (
    <svg className="stage-gizmo" ref={picture} viewBox="-84 -44 168 88" aria-hidden="true">
      {AXES.map(({ key }) => (
        // Where they point is known when the stage is first drawn.
        <g key={key} visibility="hidden">
          <line x1="0" y1="0" x2="0" y2="0" />
          <text>{t(key)}</text>
        </g>
      ))}
    </svg>
  );
}

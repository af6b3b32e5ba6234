import { createSlowClock } from '../../engine/release/slowMotion';
import { rpmFromAngularSpeed } from '../../engine/units';
import type { PullsShow } from '../../state/pullsShow';
import { secondsPerTurn } from '../../state/turnTime';
import type { StageEye, StageKit } from '../stageKit';
import type { ViewControl } from './viewControl';

/**
 * The head seen by one who stands outside: it goes round the shaft, slowed. The world of the stage turns with the rotor, so
 * it is the eye that goes round the other way, and what stands still (`kit.roomFrame`) with it: handles, labels and the
 * pointer stay right. Frames are asked for only while it turns. Returns what ends it.
 */
export function attachTurning(kit: StageKit, view: ViewControl, show: PullsShow): () => void {
  let outside = false;
  const clock = createSlowClock(1);

  function changed(): void {
    const { open, eye } = show.shown;
    const now = open && eye === 'outside';
    if (now !== outside) {
      outside = now;
      clock.pause();
      kit.roomFrame.rotation.z = 0;
      if (now) view.showDisc();
      else view.show(view.view);
    }
    kit.eye?.invalidate();
  }

  function turn(eye: StageEye): void {
    if (!outside || !show.shown.turning || !view.orbit) {
      clock.pause();
      return;
    }
    const passed = clock.tick(performance.now() / 1000);
    const designRpm = rpmFromAngularSpeed(kit.angularSpeed);
    const seconds = secondsPerTurn(show.shown.speedRpm ?? designRpm, designRpm);
    if (seconds === Infinity) return;
    const step = (2 * Math.PI * passed) / seconds;
    const [c, s] = [Math.cos(step), Math.sin(step)];
    for (const point of [eye.camera.position, view.orbit.target]) {
      point.set(c * point.x + s * point.y, c * point.y - s * point.x, point.z);
    }
    kit.roomFrame.rotation.z -= step;
    view.orbit.update();
    eye.camera.updateMatrixWorld();
    eye.invalidate();
  }

  const stop = show.subscribe(changed);
  kit.frameTasks.add(turn);
  changed();
  return () => {
    stop();
    kit.frameTasks.delete(turn);
  };
}

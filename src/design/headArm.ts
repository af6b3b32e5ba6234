import type { ParallelRod } from '../engine/linkage/parallelRod';
import { transformPoint } from '../engine/math/pose';
import type { HeadNode } from './headNode';

/**
 * The rod on an arm's first ball, parallel to the shaft. The part that hangs on that ball, hidden or not, says on which
 * side the slider lies; without one it is the -Z side.
 */
export function rodOfArm(arm: HeadNode): ParallelRod {
  const ball = arm.sockets.find((socket) => socket.mates === 'ball');
  if (!ball) throw new Error(`rodOfArm(): part has no ball: ${arm.part.id}`);
  const rod = arm.children.find(
    (node) => node.carriedByRod && node.part.socket?.name === ball.name,
  );
  return {
    ball_G: transformPoint(arm.pose, ball.pose.translation),
    direction: rod?.type.rodDirection?.(rod.values) ?? -1,
  };
}

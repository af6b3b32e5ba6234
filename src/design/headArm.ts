import type { ParallelRod } from '../engine/linkage/parallelRod';
import { transformPoint } from '../engine/math/pose';
import type { HeadNode } from './headNode';

/**
 * The rod on an arm's first ball, parallel to the shaft. The slider lies on the +Z side where the pitch link on that
 * ball says so, hidden or not; on the -Z side otherwise.
 */
export function rodOfArm(arm: HeadNode): ParallelRod {
  const ball = arm.sockets.find((socket) => socket.mates === 'ball');
  if (!ball) throw new Error(`rodOfArm(): part has no ball: ${arm.part.id}`);
  const above = arm.children.some(
    ({ part }) =>
      part.kind === 'pitchLink' && part.socket?.name === ball.name && part.slider === 'above',
  );
  return {
    ball_G: transformPoint(arm.pose, ball.pose.translation),
    direction: above ? 1 : -1,
  };
}

import type { HeadAnalysis } from '../../headAnalysis';
import type { LeftOut } from '../../runs';
import { say } from '../../say';

/** What takes no part in any fit, and what was assumed: one sentence each. */
export function leftOutLines({ rungs, faults, assumed, apart }: HeadAnalysis): readonly string[] {
  const lines = faults.map(({ run, fault }) =>
    say(`benchRoom.runFault.${fault.kind}`, {
      name: run.name,
      fitted: fault.kind === 'noRung' ? fault.fitted : '',
    }),
  );
  for (const one of apart)
    lines.push(
      say(`benchRoom.apart.${one.why}`, {
        name: one.run.name,
        head: one.why === 'otherHead' ? one.name : '',
      }),
    );
  for (const run of assumed) lines.push(say('benchRoom.assumedRung', { name: run.name }));
  for (const { runs } of rungs)
    for (const { run, read } of runs) {
      const counts = new Map<LeftOut, number>();
      for (const { why } of read.leftOut) counts.set(why, (counts.get(why) ?? 0) + 1);
      for (const [why, count] of counts)
        lines.push(say(`benchRoom.leftOut.${why}`, { name: run.name, count }));
      if (read.unsaid.length > 0)
        lines.push(say('benchRoom.unsaid', { name: run.name, count: read.unsaid.length }));
      if (read.beyondCalibration.length > 0)
        lines.push(
          say('benchRoom.beyond', { name: run.name, count: read.beyondCalibration.length }),
        );
    }
  return lines;
}

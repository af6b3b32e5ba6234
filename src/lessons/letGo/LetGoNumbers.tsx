import { useState } from 'react';
import type { PlotData } from '../../ui/drawn/plotLayout';
import { PlotNumbers } from '../../ui/plots/PlotNumbers';
import { useLetGo } from './useLetGo';

/** A plot of the grip let go in numbers: written anew when the head changes and when a run comes to a stand, not in between. */
export function LetGoNumbers(props: {
  readonly data: () => PlotData | null;
  readonly name: string;
  readonly testId: string;
}) {
  const { name, testId } = props;
  const [data, setData] = useState(props.data);
  useLetGo((_, desk, head) => {
    if (head || !desk.moving) setData(props.data());
  });
  return <PlotNumbers data={data} name={name} testId={testId} />;
}

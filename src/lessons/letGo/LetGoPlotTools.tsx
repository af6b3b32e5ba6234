import { t } from '../../messages';
import type { PlotData } from '../../ui/drawn/plotLayout';
import { PlotTools } from '../../ui/plots/PlotTools';
import { useSession } from '../../ui/session';

/** Takes a plot of the grip let go off the page, or shows it in numbers. */
export function LetGoPlotTools(props: {
  readonly testId: string;
  /** Of a file. */
  readonly name: string;
  /** Null while there is nothing in it. */
  readonly data: () => PlotData | null;
  readonly summary: () => string;
  readonly asTable: boolean;
  readonly onTable: (asTable: boolean) => void;
}) {
  const { store, live } = useSession();
  return (
    <PlotTools
      testId={props.testId}
      plot={() => {
        live.flush();
        const data = props.data();
        return (
          data && {
            data,
            design: store.getState().design,
            lines: [`${t('lower.letGo')}. ${t('letGo.assumes')}`],
            summary: props.summary(),
            name: props.name,
          }
        );
      }}
      asTable={props.asTable}
      onTable={props.onTable}
    />
  );
}

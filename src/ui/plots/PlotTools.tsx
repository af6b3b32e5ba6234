import { useState } from 'react';
import { t } from '../../messages';
import { Menu, MenuItem } from '../Menu';
import { PLOT_FILES, type PlotFile, type PlotToSave, useSavePlot } from '../plotFiles';
import { CopyTable } from './CopyTable';
import { plotText } from './plotText';
import './plotTools.css';

/** What takes a plot off the page: copied, or saved as a picture or as numbers; and whether it is shown as a table. */
export function PlotTools(props: {
  /** Of the button that copies; the others' go on from it. */
  readonly testId: string;
  /** The plot as it is now; null where there is none. */
  readonly plot: () => PlotToSave | null;
  readonly asTable: boolean;
  readonly onTable: (asTable: boolean) => void;
}) {
  const { testId, plot, asTable, onTable } = props;
  const savePlot = useSavePlot();
  const [said, setSaid] = useState('');

  function copied(): string | null {
    const shown = plot();
    return shown && plotText(shown.data, shown.lines.join(' '));
  }
  async function save(kind: PlotFile): Promise<void> {
    const shown = plot();
    setSaid(shown ? await savePlot(shown, kind) : t('plots.empty'));
  }

  return (
    <span className="ui-plot-tools">
      <button
        type="button"
        className="ui-button ui-button-small"
        aria-pressed={asTable}
        data-testid={`${testId}-table`}
        onClick={() => onTable(!asTable)}
      >
        {t('chart.table')}
      </button>
      <CopyTable testId={`${testId}-copy`} text={copied} />
      <Menu
        label={t('plots.save')}
        className="ui-button ui-button-small"
        testId={`${testId}-save`}
        button={t('plots.save')}
      >
        {PLOT_FILES.map((kind) => (
          <MenuItem key={kind} testId={`${testId}-save-${kind}`} onClick={() => void save(kind)}>
            {t(`plots.${kind}`)}
          </MenuItem>
        ))}
      </Menu>
      <span role="status">{said}</span>
    </span>
  );
}

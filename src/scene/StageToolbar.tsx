import { t } from '../messages';
import { useAppState, useSession } from '../ui/session';
import { VIEW_NAMES } from './maths/fitView';
import { STAGE_LAYERS } from './stageKit';
import type { ViewControl } from './view/viewControl';

/** Switches for what is drawn over the parts. */
export function LayerToggles() {
  const { actions } = useSession();
  const layers = useAppState((state) => state.settings.layers);
  return (
    <div className="stage-layers" role="group" aria-label={t('stage.layers')}>
      {STAGE_LAYERS.map((layer) => (
        <button
          key={layer}
          type="button"
          className="stage-toggle"
          aria-pressed={layers[layer]}
          title={t(`stage.layer.${layer}.help`)}
          onClick={() => actions.setSettings({ layers: { ...layers, [layer]: !layers[layer] } })}
        >
          {t(`stage.layer.${layer}`)}
        </button>
      ))}
    </div>
  );
}

/** The camera's named places. */
export function ViewButtons({ view }: { readonly view: ViewControl }) {
  return (
    <div className="stage-views" role="group" data-stage-control aria-label={t('stage.views')}>
      {VIEW_NAMES.map((name) => (
        <button key={name} type="button" onClick={() => view.show(name)}>
          {t(`stage.view.${name}`)}
        </button>
      ))}
      <button type="button" onClick={() => view.show('threeQuarter')}>
        {t('stage.view.reset')}
      </button>
    </div>
  );
}

import { useEffect, useRef } from 'react';
import { bottomsOut } from '../../design/bottomsOut';
import { shortBolts } from '../../design/engagement';
import { misfits } from '../../design/misfits';
import { anglesOf } from '../../design/verdict';
import { t } from '../../messages';
import { overlapText } from '../../state/gapText';
import type { TopicId } from '../../state/help/topics';
import type { HeadReading } from '../../state/reading';
import { verdictOnClamp, verdictOnLimits } from '../../state/words/firstLimit';
import { bottomText, misfitText, shortText } from '../../state/words/misfitText';
import { type VerdictText, verdictText } from '../../state/words/verdictText';
import { HelpName } from '../../ui/help/HelpName';
import { MathText } from '../../ui/MathText';
import { useSession } from '../../ui/session';
import { useClearance } from '../../ui/useClearance';
import { useLive } from '../../ui/useLive';
import { setText } from '../marks/svg';
import './verdict.css';

/** Quiet time after the last change before the sentence is read out, ms. */
const READ_OUT_DELAY = 700;
/** What was read out goes then: who reads through the page would meet it twice, ms. */
const READ_OUT_STAYS = 5000;

/**
 * One sentence that is always true of the head as it stands, what is missing, and the four figures that matter.
 * Written straight into the page with every frame of a drag; read out only when the drag has ended.
 */
export function Verdict() {
  const { store, live } = useSession();
  const root = useRef<HTMLElement>(null);
  const spoken = useRef<HTMLParagraphElement>(null);
  /** What was read out last. */
  const said = useRef('');
  /** What enters a keep-out, in words. */
  const clash = useRef<string | null>(null);
  /** What is beyond its limit, in words; undefined: not looked at since the last change. */
  const beyond = useRef<string | null | undefined>(undefined);
  const pending = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const leaving = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  /** The last change, ms. */
  const quietFrom = useRef(0);

  function show(reading: HeadReading): void {
    if (!root.current) return;
    const { settings, gesture, design } = store.getState();
    // Some twenty pitches with all their loads: not in the frames of a drag, but when it has ended.
    if (beyond.current === undefined && !gesture) {
      const found = [
        verdictOnLimits(reading, design.rotor),
        verdictOnClamp(reading, design.bladeBolt?.clampForceN ?? 0),
      ].filter((text) => text !== null);
      beyond.current = found.length > 0 ? found.join(' ') : null;
    }
    const verdict = reading.verdict();
    const text = verdictText(verdict, restsOf(reading), settings.units);
    const wrong =
      misfitText(misfits(live.model), settings.units) ??
      bottomText(bottomsOut(live.model), settings.units) ??
      shortText(shortBolts(live.model), settings.units) ??
      clash.current;
    const limit = beyond.current ?? null;
    root.current.toggleAttribute('data-misfit', (wrong ?? limit) !== null);
    root.current.toggleAttribute('data-restless', restsOf(reading).length === 0);
    const detail = wrong ?? (limit === null ? text.detail : `${limit} ${text.detail}`.trim());
    write(root.current, verdict.kind, { ...text, detail });
    quietFrom.current = now();
    pending.current ??= setTimeout(readOut, READ_OUT_DELAY);
  }
  useLive((reading, changes) => {
    if (changes.design) beyond.current = undefined;
    if (changes.design || changes.settings) show(reading);
  }, 'verdict');
  useClearance(({ pairs }) => {
    const { units } = store.getState().settings;
    const nameOf = (id: string) => live.reading.part(id)?.part.name || id;
    const text = overlapText(pairs, nameOf, units);
    if (text === clash.current) return;
    clash.current = text;
    show(live.reading);
  });
  const onGesture = useRef((_gesture: boolean) => {});
  useEffect(() => {
    onGesture.current = (gesture) => {
      // A sentence that grows during a drag must not push the stage away from under the pointer.
      keepHeight(root.current, gesture);
      if (gesture) return;
      live.flush();
      // A hand that has rested before it let go has left nothing to tell but this.
      if (beyond.current === undefined) show(live.reading);
    };
  });
  useEffect(
    () =>
      store.subscribe(({ gesture }, before) => {
        if (gesture !== before.gesture) onGesture.current(gesture);
      }),
    [store],
  );
  useEffect(
    () => () => {
      clearTimeout(pending.current);
      clearTimeout(leaving.current);
      pending.current = undefined;
    },
    [],
  );

  function readOut(): void {
    const quiet = now() - quietFrom.current;
    if (store.getState().gesture || quiet < READ_OUT_DELAY - 1) {
      const left = store.getState().gesture ? READ_OUT_DELAY : READ_OUT_DELAY - quiet;
      pending.current = setTimeout(readOut, left);
      return;
    }
    pending.current = undefined;
    if (beyond.current === undefined) {
      show(live.reading);
      clearTimeout(pending.current);
      pending.current = undefined;
    }
    const line = place(root.current, 'line')?.textContent ?? '';
    const detail = place(root.current, 'detail')?.textContent ?? '';
    const text = `${line} ${detail}`;
    if (!spoken.current || said.current === text) return;
    said.current = text;
    spoken.current.textContent = text;
    clearTimeout(leaving.current);
    leaving.current = setTimeout(() => {
      if (spoken.current) spoken.current.textContent = '';
    }, READ_OUT_STAYS);
  }

  return (
    <section className="verdict" aria-label={t('verdict.label')} ref={root}>
      <div className="verdict-words">
        <p className="verdict-line" data-testid="verdict-line" data-place="line" />
        <p className="verdict-detail" data-testid="verdict-detail" data-place="detail" />
        <p className="ui-unseen" aria-live="polite" ref={spoken} />
      </div>
      <dl className="verdict-figures">
        <Figure place="hold" testId="figure-hold" topic="pushRodForce" labelPlace="holdLabel" />
        <Figure
          place="rest"
          testId="figure-rest"
          topic="restAngle"
          label={t('verdict.figureRest')}
          mark
        />
        <Figure
          place="difference"
          testId="figure-difference"
          topic="difference"
          label={t('verdict.figureDifference')}
          help={t('verdict.figureDifferenceHelp')}
        />
        <Figure
          place="overCentre"
          testId="figure-over-centre"
          topic="overCentre"
          label={t('verdict.figureOverCentre')}
        />
      </dl>
    </section>
  );
}

/** Until a drag has ended the element stays as high as it is. */
function keepHeight(element: HTMLElement | null, held: boolean): void {
  if (element) element.style.height = held ? `${element.offsetHeight}px` : '';
}

function now(): number {
  return performance.now();
}

function Figure(props: {
  readonly place: keyof VerdictText;
  readonly testId: string;
  readonly topic: TopicId;
  readonly label?: string;
  readonly labelPlace?: keyof VerdictText;
  readonly help?: string;
  readonly mark?: boolean;
}) {
  return (
    <div className="verdict-figure" title={props.help}>
      <dt>
        <HelpName id={props.topic}>
          <span data-place={props.labelPlace}>
            {props.label && <MathText text={props.label} />}
          </span>
        </HelpName>
      </dt>
      <dd>
        {props.mark && <span className="verdict-rest-mark" aria-hidden="true" />}
        <span data-testid={props.testId} data-place={props.place} />
      </dd>
    </div>
  );
}

/** Where the texts go, looked up once: React keeps these elements as long as the root. */
const places = new WeakMap<HTMLElement, Map<string, Element | null>>();

function place(root: HTMLElement | null, name: string): Element | null {
  if (!root) return null;
  const known = places.get(root) ?? new Map<string, Element | null>();
  places.set(root, known);
  let found = known.get(name);
  if (!found) {
    found = root.querySelector(`[data-place="${name}"]`);
    known.set(name, found);
  }
  return found;
}

function write(root: HTMLElement, kind: string, text: VerdictText): void {
  if (root.dataset.kind !== kind) root.dataset.kind = kind;
  for (const name in text) {
    const element = place(root, name);
    if (element) setText(element, text[name as keyof VerdictText]);
  }
}

function restsOf(reading: HeadReading): number[] {
  return anglesOf(reading.equilibria, 'stable');
}

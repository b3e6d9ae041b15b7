/**
 * The step to a plan that a visit is at, and the row that is being typed: they outlive a reload with the tab, and the tab where the
 * plan itself is stored in this browser.
 */
import type { RowText } from '../start/plant-row.ts';
import { START_STEPS, type StepOrSeason } from '../start/start-steps.ts';

const NAME = 'runnelStep';

export interface KeptStep {
  readonly step: StepOrSeason;
  readonly row: RowText | undefined;
  /** Name of the plan that it belongs to. */
  readonly plan: string | undefined;
}

/** Where it is kept: with the tab's place in the browser's history, beside the plan of that storage key, or both. */
export interface StepPlace {
  readonly hasAddress: boolean;
  readonly storageKey: string | undefined;
}

/** Undefined where the steps were done or left, or not begun. */
export function keptStep({ hasAddress, storageKey }: StepPlace): KeptStep | undefined {
  const ofTab = hasAddress ? (Object(history.state) as { readonly [NAME]?: KeptStep })[NAME] : undefined;
  const kept = ofTab ?? (storageKey === undefined ? undefined : stored(keyOf(storageKey)));
  return kept !== undefined && isStep(kept.step) ? kept : undefined;
}

export function keepStep({ hasAddress, storageKey }: StepPlace, kept: KeptStep | undefined): void {
  if (hasAddress) keepWithTab(kept);
  if (storageKey !== undefined) store(keyOf(storageKey), kept);
}

function keepWithTab(kept: KeptStep | undefined): void {
  const { [NAME]: before, ...others } = Object(history.state) as Record<string, unknown>;
  if (JSON.stringify(before) === JSON.stringify(kept)) return;
  history.replaceState(kept === undefined ? others : { ...others, [NAME]: kept }, '');
}

const keyOf = (storageKey: string): string => `runnel-step:${storageKey}`;

const isStep = (step: unknown): boolean => step === 'season' || START_STEPS.some((each) => each === step);

/** A browser may refuse its storage, and anything may lie in it. */
function stored(key: string): KeptStep | undefined {
  try {
    return Object(JSON.parse(localStorage.getItem(key) ?? 'null')) as KeptStep;
  } catch {
    return undefined;
  }
}

/** What a browser refuses to store is kept with the tab alone. */
function store(key: string, kept: KeptStep | undefined): void {
  try {
    if (kept === undefined) localStorage.removeItem(key);
    else localStorage.setItem(key, JSON.stringify(kept));
  } catch {
    return;
  }
}

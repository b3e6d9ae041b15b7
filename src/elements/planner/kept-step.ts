/** The step to a plan that a page's visit is at, and the row that is being typed: they outlive a reload, and go with the tab. */
import type { RowText } from '../start/plant-row.ts';
import type { StepOrSeason } from '../start/start-steps.ts';

const NAME = 'runnelStep';

export interface KeptStep {
  readonly step: StepOrSeason;
  readonly row: RowText | undefined;
}

/** Undefined where the steps were done or left, or not begun. */
export function keptStep(): KeptStep | undefined {
  return (Object(history.state) as { readonly [NAME]?: KeptStep })[NAME];
}

export function keepStep(kept: KeptStep | undefined): void {
  const { [NAME]: before, ...others } = Object(history.state) as Record<string, unknown>;
  if (JSON.stringify(before) === JSON.stringify(kept)) return;
  history.replaceState(kept === undefined ? others : { ...others, [NAME]: kept }, '');
}

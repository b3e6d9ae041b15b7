import type { LitElement, TemplateResult } from 'lit';
import type { IsoDate } from '../../engine/calendar.ts';
import type { AssumedOfPlan } from '../../plan/schema/plan-schema.ts';
import type { FormContext } from '../garden/form-context.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import type { Drawing } from './drawings.data.ts';
import type { PlantRow } from './plant-row.ts';
import type { ShownStep, StepOrSeason } from './start-steps.ts';

/** The element whose content the steps are. */
export interface StartHost extends LitElement {
  readonly today: IsoDate | undefined;
  readonly example: string | undefined;
  step: ShownStep;
  /** That which was left for the ways to begin. */
  leftStep: StepOrSeason | undefined;
  readonly isKept: boolean;
  keptRow: unknown;
  tellStep(): void;
}

/** What the steps share. */
export interface StartContext extends FormContext {
  readonly host: StartHost;
  readonly consumer: PlanConsumer;
  /** The row of a planting that is being typed. */
  readonly row: PlantRow;
  /** The planting and the line of it whose laying is looked at. */
  readonly laying: { planting: string | undefined; line: number };
  readonly draw: (drawing: Drawing) => TemplateResult;
  readonly go: (step: StepOrSeason) => void;
}

/** What a step shows; it comes with the step's code, and keeps what is begun in it. */
export type StepTemplate = (context: StartContext) => TemplateResult;

/** Called once, when a step is first shown. */
export type MakeStep = (host: StartHost, plan: PlanConsumer) => StepTemplate;

export const isAssumed = ({ plan }: Pick<StartContext, 'plan'>, part: AssumedOfPlan): boolean =>
  plan.assumed?.includes(part) === true;

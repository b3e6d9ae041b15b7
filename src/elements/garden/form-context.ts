/** What the parts of the garden's editor share. */
import type { Season } from '../../engine/season/season.ts';
import type { Reader } from '../../language/reader.ts';
import type { Change, Edit } from '../../plan/edits/edit.ts';
import type { Plan, PlanLine, PlanPlanting } from '../../plan/schema/plan-schema.ts';
import type { FormController } from './form-controller.ts';

export interface FormContext {
  readonly plan: Plan;
  readonly season: Season;
  readonly form: FormController;
  readonly reading: Reader;
  /** Whether a zone's or planting's form is unfolded. */
  readonly isOpen: (id: string) => boolean;
  readonly toggle: (id: string, open: boolean) => void;
}

/** The same for the parts of one planting's form. */
export interface PlantingContext extends FormContext {
  readonly planting: PlanPlanting;
  /** Key of one of its fields. */
  readonly key: (field: string) => string;
  readonly change: (part: Change<Omit<PlanPlanting, 'id'>>) => Edit;
}

/** A line that brings water. */
export type WateringLine = Exclude<PlanLine, { kind: 'solid' }>;

/** The same for the parts of one line's form. */
export interface LineContext extends Pick<FormContext, 'plan' | 'form'> {
  readonly key: (field: string) => string;
  readonly edit: (line: PlanLine) => Edit;
}

/** What the parts of the garden's forms share. */
import type { Season } from '../../engine/season/season.ts';
import type { Format } from '../../language/format/format.ts';
import type { Reader } from '../../language/reader.ts';
import { changed } from '../../plan/edits/change.ts';
import type { Change, Edit } from '../../plan/edits/edit.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import type { FormController } from './form-controller.ts';

export interface FormContext {
  readonly plan: Plan;
  readonly season: Season;
  readonly form: FormController;
  readonly reader: Reader;
  readonly format: Format;
  /** Whether a zone's or planting's form is unfolded. */
  readonly isOpen: (id: string) => boolean;
  readonly toggle: (id: string, open: boolean) => void;
}

/** A part of the plan as its form edits it. */
export interface FormPart<Part extends object> {
  readonly value: Part;
  /** Key of one of its fields, unlike any other of the page. */
  readonly key: (field: string) => string;
  /** The edit that changes some of its fields; one given as undefined is left out from then on. */
  readonly change: (change: Change<Part>) => Edit;
}

/** A part inside another: `value` is what stands in its field, or what it begins with. */
export function innerPart<Whole extends object, Field extends keyof Whole & string, Inner extends object>(
  { key, change }: FormPart<Whole>,
  field: Field,
  value: Inner & NonNullable<Whole[Field]>,
): FormPart<Inner> {
  return {
    value,
    key: (inner) => key(`${field}-${inner}`),
    change: (part) => change({ [field]: changed<Inner>(value, part) } as unknown as Change<Whole>),
  };
}

/** What the parts of the garden's forms share. */
import type { Season } from '../../engine/season/season.ts';
import type { Format } from '../../language/format/format.ts';
import type { Reader } from '../../language/reader.ts';
import { changed } from '../../plan/edits/change.ts';
import type { Change, Edit } from '../../plan/edits/edit.ts';
import type { Path } from '../../plan/reading/place.ts';
import { PLAN_SCHEMAS, type Plan } from '../../plan/schema/plan-schema.ts';
import { childSchema, resolveSchema, type SchemaNode } from '../../plan/schema/walk.ts';
import type { NoticeLines } from '../notices/notice-lines.ts';
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
  /** What needs attention, for forms that show it. */
  readonly notices?: NoticeLines;
}

/** A part of the plan as its form edits it. */
export interface FormPart<Part extends object> {
  readonly value: Part;
  /** The plan's schema of it. */
  readonly schema: SchemaNode;
  /** Key of one of its fields, unlike any other of the page. */
  readonly key: (field: string) => string;
  /** The edit that changes some of its fields; one given as undefined is left out from then on. */
  readonly change: (change: Change<Part>) => Edit;
}

/** A part inside another: `value` is what stands in its field, or what it begins with. */
export function innerPart<Whole extends object, Field extends keyof Whole & string, Inner extends object>(
  { schema, key, change }: FormPart<Whole>,
  field: Field,
  value: Inner & NonNullable<Whole[Field]>,
): FormPart<Inner> {
  return {
    value,
    schema: innerSchema(schema, field, value),
    key: (inner) => key(`${field}-${inner}`),
    change: (part) => change({ [field]: changed<Inner>(value, part) } as unknown as Change<Whole>),
  };
}

/** The schema of the part of a plan that stands at a path. */
export function schemaAt(plan: Plan, path: Path): SchemaNode {
  let schema: SchemaNode = PLAN_SCHEMAS[plan.units] as unknown as SchemaNode;
  let value: unknown = plan;
  for (const key of path) {
    value = (value as Readonly<Record<string | number, unknown>> | undefined)?.[key];
    schema = innerSchema(schema, String(key), value);
  }
  return schema;
}

/** The schema of one field of a part. */
export function fieldSchema(part: SchemaNode, field: string): SchemaNode {
  const schema = childSchema(part, field);
  if (schema === undefined) throw new TypeError(`The plan's schema has no field "${field}" there.`);
  return schema;
}

/** The schema of what stands in a field: past `optional`, and of several kinds the one that the value is of. */
export function innerSchema(part: SchemaNode, field: string, value: unknown): SchemaNode {
  const schema = resolveSchema(fieldSchema(part, field), value);
  if (schema === undefined) throw new TypeError(`The value of "${field}" is of no kind that its schema has.`);
  return schema;
}

/** Fields of a form as a table: one row for each field of a part of the plan, in the order in which they are shown. */
import type { TemplateResult } from 'lit';
import type { Quantity } from '../../engine/units.ts';
import type { Change, Edit } from '../../plan/edits/edit.ts';
import type { SchemaNode } from '../../plan/schema/walk.ts';
import {
  type ChoiceField,
  checkField,
  choiceField,
  dateField,
  type FieldWords,
  numberField,
  textField,
} from './fields.ts';
import { type FormContext, type FormPart, fieldSchema } from './form-context.ts';
import type { Option } from './options.ts';

/**
 * A row for every field of `Part`: a field that the plan's schema has and the table has not does not compile. `Context`: what
 * rows that draw themselves are given.
 */
export type FieldTable<Part extends object, Context extends FormContext> = {
  readonly [Field in keyof Part]-?: Row<Part[Field]> | OwnRow<Part, Context>;
};

/** Of a part whose fields stand in several tables: a field that none of them shows is asked for, and so does not compile. */
export type Unshown<Part extends object, Shown extends keyof Part> = Readonly<
  Record<Exclude<keyof Part, Shown>, never>
>;

/** Words for every field of `Part` that is one input. */
export type TableWords<Part extends object> = {
  readonly [Field in keyof Part as [Row<Part[Field]>] extends [never] ? never : Field]-?: FieldWords;
};

type Row<Value> = [NonNullable<Value>] extends [boolean]
  ? CheckRow
  : [NonNullable<Value>] extends [number]
    ? NumberRow
    : [NonNullable<Value>] extends [string]
      ? string extends NonNullable<Value>
        ? TextRow & (undefined extends Value ? { readonly isOptional: true } : { readonly isOptional?: never })
        : ChoiceRow<NonNullable<Value>>
      : never;

/** What is left out may stay empty: its words say what holds then, or `fallback` does. */
export interface NumberRow {
  readonly kind: 'number';
  /** Left out: a bare number, or one with the unit of its words. */
  readonly quantity?: Quantity;
  /** In the engine's unit, where it is of a quantity. */
  readonly fallback?: number;
}

export interface TextRow {
  readonly kind: 'text' | 'date';
  readonly isOptional?: boolean;
}

export interface ChoiceRow<Value extends string> {
  readonly kind: 'choice';
  /** Its words' `empty` stands before these where nothing has to be chosen. */
  readonly options: (context: FormContext) => readonly Option<Value>[];
  /** What holds where nothing is chosen. */
  readonly fallback?: Value;
}

/** Ticked, or left out. */
export interface CheckRow {
  readonly kind: 'check';
}

/** Draws its own fields. */
export interface OwnRow<Part extends object, Context extends FormContext> {
  readonly kind: 'own';
  readonly fields: (part: FormPart<Part>, context: Context) => unknown;
}

/** The inputs of a table, row by row. */
export function tableFields<Part extends object, Context extends FormContext>(
  table: FieldTable<Part, Context>,
  words: TableWords<NoInfer<Part>>,
  part: FormPart<NoInfer<Part>>,
  context: NoInfer<Context>,
): readonly unknown[] {
  return (Object.keys(table) as (keyof Part & string)[]).map((field) => {
    const row = table[field] as InputRow | OwnRow<Part, Context>;
    if (row.kind === 'own') return row.fields(part, context);
    const own = (words as Readonly<Record<string, FieldWords>>)[field];
    if (own === undefined) throw new TypeError(`There are no words for the field "${field}".`);
    const change = (value: unknown) => part.change({ [field]: value } as Change<Part>);
    const input = {
      key: part.key(field),
      words: own,
      value: part.value[field],
      schema: fieldSchema(part.schema, field),
      edit: change,
    };
    return inputOf(row, input, context);
  });
}

type InputRow = NumberRow | TextRow | ChoiceRow<string> | CheckRow;

interface Input {
  readonly key: string;
  readonly words: FieldWords;
  readonly value: unknown;
  readonly schema: SchemaNode;
  readonly edit: (value: unknown) => Edit;
}

/** The type of a table says that a row is of its value's kind. */
function inputOf(row: InputRow, { value, schema, ...input }: Input, context: FormContext): TemplateResult {
  switch (row.kind) {
    case 'number':
      return numberField({ ...row, ...input, schema, value: value as number | undefined }, context);
    case 'text':
      return textField({ ...row, ...input, value: value as string | undefined }, context);
    case 'date':
      return dateField({ ...row, ...input, value: value as string | undefined }, context);
    case 'check':
      return checkField({ ...input, value: value === true, edit: (has) => input.edit(has || undefined) }, context);
    case 'choice':
      return choiceField(choiceOf(row, { ...input, schema, value }, context), context);
  }
}

function choiceOf(
  row: ChoiceRow<string>,
  { value, edit, schema: _, ...input }: Input,
  context: FormContext,
): ChoiceField<string> {
  const { empty } = input.words;
  const options = row.options(context);
  return {
    ...input,
    value: (value as string | undefined) ?? row.fallback ?? '',
    isSet: value !== undefined,
    options: empty === undefined ? options : [{ value: '', label: empty }, ...options],
    edit: (chosen) => edit(chosen === '' ? undefined : chosen),
  };
}

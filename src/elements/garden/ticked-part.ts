/** A part of the plan that is there or is not: a box to tick, and its fields where it is. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Change } from '../../plan/edits/edit.ts';
import { type FieldTable, type TableWords, tableFields } from './field-table.ts';
import { checkField, type FieldWords } from './fields.ts';
import { type FormContext, type FormPart, innerPart } from './form-context.ts';

export interface TickedPart<Whole extends object, Field extends keyof Whole & string> {
  readonly whole: FormPart<Whole>;
  readonly field: Field;
  /** Of the box. */
  readonly words: FieldWords;
  /** What it begins with where the box is ticked. */
  readonly begun: NonNullable<Whole[Field]>;
  readonly table: FieldTable<NonNullable<Whole[Field]> & object, FormContext>;
  readonly tableWords: TableWords<NonNullable<Whole[Field]> & object>;
}

export function tickedPart<Whole extends object, Field extends keyof Whole & string>(
  { whole, field, words, begun, table, tableWords }: TickedPart<Whole, Field>,
  context: FormContext,
): TemplateResult {
  const value = whole.value[field] as (NonNullable<Whole[Field]> & object) | undefined;
  const edit = (has: boolean) => whole.change({ [field]: has ? begun : undefined } as unknown as Change<Whole>);
  return html`${checkField({ key: whole.key(field), words, value: value !== undefined, edit }, context)}
  ${value === undefined ? nothing : tableFields(table, tableWords, innerPart(whole, field, value), context)}`;
}

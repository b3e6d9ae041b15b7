import type { LitElement, TemplateResult } from 'lit';
import type { FieldWords } from '../garden/fields.ts';
import type { FormContext } from '../garden/form-context.ts';
import { LatePart, type LocaleSource } from '../shared/late-part.ts';

/** The choice of a published table; the tables are fetched when it is first asked for. `words.empty`: of the choice of none. */
export type PublishedTableField = (
  words: FieldWords & { readonly empty: string },
  context: FormContext,
) => TemplateResult | undefined;

export function latePublishedTable(host: LitElement, plan: LocaleSource): PublishedTableField {
  const late = new LatePart(host, plan, async () => (await import('./published-table.ts')).publishedTableField);
  return (words, context) => late.part?.(words, context);
}

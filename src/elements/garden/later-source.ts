/** A source that is added to others is none until its day, or what it gives, is known: until then it stands in the form alone. */
import { html, nothing, type TemplateResult } from 'lit';
import { gardenWords } from '../../language/en/garden.ts';
import type { PlanSupply } from '../../plan/schema/plan-schema.ts';
import { refusal } from './fields.ts';
import type { FormContext } from './form-context.ts';

type Source = PlanSupply['sources'][number];

/** Open for as long as no source has been added. */
const openKey = (sources: readonly Source[]): string => `later-source-${sources.length}`;

/** Those that are there, and the one that is being added. */
export function withBegun(sources: readonly Source[], name: string, { isOpen }: FormContext): readonly Source[] {
  return isOpen(openKey(sources)) ? [...sources, { name }] : sources;
}

/** The sources with one changed; one that is only begun is added, from the season's first day unless another is given. */
export function withSourceAt(
  sources: readonly Source[],
  index: number,
  source: Source,
  { plan }: Pick<FormContext, 'plan'>,
): readonly Source[] {
  const isBegun = index === sources.length && index > 0;
  return sources.toSpliced(index, 1, isBegun ? { ...source, from: source.from ?? plan.season.firstDay } : source);
}

/** Begins another source, or gives up the one that is begun. `key`: of the button. */
export function laterSourceButton(
  { sources, key, add }: { readonly sources: readonly Source[]; readonly key: string; readonly add: string },
  context: FormContext,
): TemplateResult | typeof nothing {
  const { form, reader, isOpen, toggle } = context;
  if (form.readOnly) return nothing;
  const isBegun = isOpen(openKey(sources));
  const press = () => toggle(openKey(sources), !isBegun);
  const words = isBegun ? gardenWords(reader.language).actions.cancel : add;
  return html`<button name=${key} @click=${press}>${words}</button>${refusal(key, context)}`;
}

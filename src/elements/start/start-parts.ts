/** Pieces that every step is made of. */
import { html, nothing, type TemplateResult } from 'lit';
import type { CautionId } from '../../explain/notices/cautions.ts';
import { cautionWords } from '../../language/en/cautions.ts';
import { startWords } from '../../language/en/start.ts';
import type { AssumedOfPlan } from '../../plan/schema/plan-schema.ts';
import type { Drawing } from './drawings.data.ts';
import { isAssumed, type StartContext } from './start-context.ts';

/** The word beside what nobody has said. */
export function assumedTag(context: StartContext, isIt: boolean): TemplateResult | typeof nothing {
  return isIt ? html`<span class="tag">${startWords(context.reader.language).assumed}</span>` : nothing;
}

/** Fields whose value is assumed stand out by a broken line, and by the word. */
export function assumable(context: StartContext, part: AssumedOfPlan, content: unknown): TemplateResult {
  const isIt = isAssumed(context, part);
  return html`<div class=${isIt ? 'assumable is-assumed' : 'assumable'} id=${`part-${part}`}>${content}${assumedTag(context, isIt)}</div>`;
}

export interface Card<Value extends string> {
  readonly value: Value;
  readonly name: string;
  readonly says: string;
  readonly drawing: Drawing | undefined;
}

/** One of several, each with a drawing. */
export function cards<Value extends string>(
  context: StartContext,
  {
    key,
    legend,
    value,
    options,
    assumed,
    choose,
  }: {
    readonly key: string;
    readonly legend: string;
    readonly value: Value | undefined;
    readonly options: readonly Card<Value>[];
    readonly assumed: boolean;
    readonly choose: (value: Value) => void;
  },
): TemplateResult {
  return html`<fieldset class=${assumed ? 'cards is-assumed' : 'cards'}>
    <legend>${legend} ${assumedTag(context, assumed)}</legend>
    <div class="card-row">${options.map(
      (option) => html`<label class="card">
        <input type="radio" name=${key} value=${option.value} .checked=${option.value === value} @change=${() => choose(option.value)} />
        ${option.drawing === undefined ? nothing : context.draw(option.drawing)}
        <b>${option.name}</b><span class="says">${option.says}</span>
      </label>`,
    )}</div>
  </fieldset>`;
}

/** Further fields under a name that says what is there. */
export function fold(
  context: StartContext,
  id: string,
  title: string,
  says: string,
  content: () => unknown,
): TemplateResult {
  const toggled = (event: ToggleEvent) => context.toggle(id, event.newState === 'open');
  return html`<details class="fold" ?open=${context.isOpen(id)} @toggle=${toggled}>
    <summary>${title} <span class="quiet">${says}</span></summary>
    ${context.isOpen(id) ? html`<div class="part-body">${content()}</div>` : nothing}
  </details>`;
}

/** A caution of the trade beside what it concerns. */
export function caution(context: StartContext, id: CautionId): TemplateResult {
  return html`<p class="caution">${cautionWords(context.reader.language).full[id]}</p>`;
}

export function stepHead(title: string, lead: string): TemplateResult {
  return html`<h2 part="title" id="step-title" tabindex="-1">${title}</h2><p class="lead">${lead}</p>`;
}

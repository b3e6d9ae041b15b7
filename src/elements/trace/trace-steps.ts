import { html, nothing, type TemplateResult } from 'lit';
import type { Season } from '../../engine/season/season.ts';
import { type TracedCell, traceCell } from '../../explain/trace/trace-cell.ts';
import {
  type DescribedInput,
  type DescribedStep,
  describeStep,
  STEP_GROUPS,
  type StepGroup,
  stepGroup,
} from '../../language/describe-step.ts';
import { traceWords } from '../../language/en/trace.ts';
import type { Reader } from '../../language/reader.ts';

/** Beside a group's name what it comes to, and what stands before its steps. */
export interface GroupNote {
  readonly says?: string | undefined;
  readonly before?: TemplateResult | undefined;
}

/**
 * The steps to a cell's number in four folds, each with what it comes to. A step is its title, its result and one plain sentence; how it
 * is worked out is folded beneath.
 */
export function traceSteps(
  season: Season,
  cell: TracedCell,
  reader: Reader,
  notes: Partial<Record<StepGroup, GroupNote>>,
): TemplateResult {
  const { language } = reader;
  const words = traceWords(language);
  const steps = traceCell(season, cell);
  return html`<div class="groups" role="group" aria-label=${words.steps}>
    ${STEP_GROUPS.map((group) => {
      const of = steps.filter(({ id }) => stepGroup(id, language) === group).map((step) => describeStep(step, reader));
      const { says, before } = notes[group] ?? {};
      if (of.length === 0 && before === undefined) return nothing;
      return html`<details class="group" data-group=${group}>
        <summary><span class="title">${words.groups[group]}</span> <span class="comes-to">${says ?? of.at(-1)?.result ?? ''}</span></summary>
        ${before ?? nothing}
        <ol>${of.map((step) => stepItem(step, reader))}</ol>
      </details>`;
    })}
  </div>`;
}

function stepItem(step: DescribedStep, reader: Reader): TemplateResult {
  return html`<li>
    <details>
      <summary>
        <span class="title">${step.title}</span>
        <strong class="result">${step.result}</strong>
        <span class="says">${step.says}</span>
      </summary>
      ${working(step, reader)}
    </details>
  </li>`;
}

function working({ formula, inputs, source }: DescribedStep, { language }: Reader): TemplateResult {
  const words = traceWords(language);
  return html`<div class="working">
    <p class="formula"><strong>${words.formula}:</strong> ${formula}</p>
    <dl>${inputs.map(inputRow)}</dl>
    <p><strong>${words.source}:</strong> ${source}</p>
  </div>`;
}

function inputRow({ label, value, isWords }: DescribedInput): TemplateResult {
  return html`<dt>${label}</dt>
    <dd class=${isWords ? 'word' : ''}>${value}</dd>`;
}

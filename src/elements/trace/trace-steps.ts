import { html, type TemplateResult } from 'lit';
import type { Season } from '../../engine/season/season.ts';
import { type TracedCell, traceCell } from '../../explain/trace/trace-cell.ts';
import { type DescribedInput, type DescribedStep, describeStep } from '../../language/describe-step.ts';
import { traceWords } from '../../language/en/trace.ts';
import type { Reader } from '../../language/reader.ts';

/** The steps to a cell's number, each its title, its result and one plain sentence; how it is worked out is folded beneath. */
export function traceSteps(season: Season, cell: TracedCell, reader: Reader): TemplateResult {
  return html`<ol aria-label=${traceWords(reader.language).steps}>
    ${traceCell(season, cell).map((step) => stepItem(describeStep(step, reader), reader))}
  </ol>`;
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

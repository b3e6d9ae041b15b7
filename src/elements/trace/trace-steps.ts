import { html, type TemplateResult } from 'lit';
import type { Season } from '../../engine/season/season.ts';
import { type CellPlace, traceCell } from '../../explain/trace/trace-cell.ts';
import type { TraceStep, TraceValue } from '../../explain/trace/trace-step.ts';
import { formatTraceValue } from '../../language/format/trace-value.ts';
import type { Reader } from '../../language/reader.ts';
import { traceWords } from '../shared/words/trace-words.ts';

/** The steps to a cell's number, each its title, its result and one plain sentence; how it is worked out is folded beneath. */
export function traceSteps(season: Season, cell: CellPlace, reading: Reader): TemplateResult {
  return html`<ol aria-label=${traceWords.steps}>
    ${traceCell(season, cell).map(
      (step) => html`<li>
        <details>
          <summary>
            <span class="title">${step.title}</span>
            <strong class="result">${formatTraceValue(step.result, reading)}</strong>
            <span class="says">${step.says}</span>
          </summary>
          ${working(step, reading)}
        </details>
      </li>`,
    )}
  </ol>`;
}

function working({ formula, inputs, source }: TraceStep, reading: Reader): TemplateResult {
  return html`<div class="working">
    <p class="formula"><strong>${traceWords.formula}:</strong> ${formula}</p>
    <dl>${inputs.map((input) => inputRow(input, reading))}</dl>
    <p><strong>${traceWords.source}:</strong> ${source}</p>
  </div>`;
}

function inputRow(input: TraceValue, reading: Reader): TemplateResult {
  const isWord = typeof input.value === 'string';
  return html`<dt>${input.label}</dt>
    <dd class=${isWord ? 'word' : ''}>${formatTraceValue(input, reading)}</dd>`;
}

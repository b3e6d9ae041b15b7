import { html, nothing, type TemplateResult } from 'lit';
import { describeFault } from '../../language/describe-fault.ts';
import { faultListWords } from '../../language/en/fault-list.ts';
import { formatFor } from '../../language/format/format.ts';
import type { Reader } from '../../language/reader.ts';
import type { Fault } from '../../plan/reading/fault.ts';

/** What a refused file or edit has wrong with it, each with its place, what stands there and what was expected. */
export function faultsTemplate(
  refused: 'file' | 'edit',
  faults: readonly Fault[],
  reader: Reader,
  planStays = true,
): TemplateResult | typeof nothing {
  if (faults.length === 0) return nothing;
  const words = faultListWords(reader.language);
  return html`<section class="faults">
    <h2>${words.title[refused](formatFor(reader), faults.length)}</h2>
    ${planStays ? html`<p class="quiet">${words.planStays}</p>` : nothing}
    <ul>
      ${faults.map((fault) => {
        const { where, value, expected } = describeFault(fault, reader);
        return html`<li><strong>${where}</strong><span>${words.found(value)}</span><span>${words.expected(expected)}</span></li>`;
      })}
    </ul>
  </section>`;
}

import { html, nothing, type TemplateResult } from 'lit';
import { describeFault } from '../../language/describe-fault.ts';
import type { Reader } from '../../language/reader.ts';
import type { Fault } from '../../plan/reading/fault.ts';
import { noticeWords } from '../shared/words/notice-words.ts';

/** What a refused file or edit has wrong with it, each with its place, what stands there and what was expected. */
export function faultsTemplate(
  faults: readonly Fault[],
  planStays: boolean,
  reader: Reader,
): TemplateResult | typeof nothing {
  if (faults.length === 0) return nothing;
  return html`<section class="faults">
    <h2>${noticeWords.faultsTitle(faults.length)}</h2>
    ${planStays ? html`<p class="quiet">${noticeWords.faultsStay}</p>` : nothing}
    <ul>
      ${faults.map((fault) => {
        const { where, found, expected } = noticeWords.fault(describeFault(fault, reader));
        return html`<li><strong>${where}</strong><span>${found}</span><span>${expected}</span></li>`;
      })}
    </ul>
  </section>`;
}

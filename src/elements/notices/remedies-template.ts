/** What a notice's "What to do" unfolds to: its remedies, best first, each with what it comes to. */
import { html, nothing, type TemplateResult } from 'lit';
import { CAUTION_IDS } from '../../explain/notices/cautions.ts';
import type { Notice } from '../../explain/notices/notice.ts';
import type { Reader } from '../../language/reader.ts';
import type { Remedy } from '../../remedies/notices/remedy.ts';
import { cautions } from '../shared/words/cautions.ts';
import { noticeRemedyWords as words } from '../shared/words/notice-remedy-words.ts';
import { REMEDY_WORDS } from '../shared/words/notice-words.ts';
import { noticePlace } from './notice-place.ts';
import { noticeSentence } from './notice-sentence.ts';
import { changeInWords, effectInWords } from './remedy-in-words.ts';

/** More troubles that a remedy brings than these are only counted. */
const MOST_TROUBLES = 2;

export interface RemediesShown {
  readonly notice: Notice;
  /** Undefined while they are being worked out. */
  readonly remedies: readonly Remedy[] | undefined;
  readonly gardenName: string;
  readonly reading: Reader;
  /** Left out where the plan can only be looked at. */
  readonly apply: ((remedy: Remedy, what: string) => void) | undefined;
}

export function remediesTemplate(shown: RemediesShown): TemplateResult {
  const { notice, remedies } = shown;
  if (remedies === undefined) return html`<p class="quiet" role="status">${words.searching}</p>`;
  if (remedies.length === 0) return html`<p>${words.none} ${REMEDY_WORDS[notice.remedy]}</p>`;
  return html`<ol>
      ${remedies.map((remedy) => remedyItem(remedy, shown))}
    </ol>
    ${cautionsOf(remedies)}`;
}

function remedyItem(remedy: Remedy, shown: RemediesShown): TemplateResult {
  const { notice, reading, apply } = shown;
  const what = changeInWords({ remedy, notice, reading });
  return html`<li>
    <p><strong>${what}</strong></p>
    <p>${effectInWords({ remedy, notice, reading }).join(' ')}</p>
    ${remedy.brings.length === 0 ? nothing : html`<p>${broughtWords(remedy, shown)}</p>`}
    ${
      apply === undefined
        ? nothing
        : html`<button aria-label=${words.applyLabel(what)} @click=${() => apply(remedy, what)}>${words.apply}</button>`
    }
  </li>`;
}

function broughtWords({ brings, seasonWith }: Remedy, { gardenName, reading }: RemediesShown): string {
  const troubles = brings.slice(0, MOST_TROUBLES).map((notice) => {
    const { name } = noticePlace(notice, seasonWith, gardenName, reading.locale);
    return words.trouble(name, noticeSentence(notice, seasonWith, reading));
  });
  const rest = brings.length - troubles.length;
  return words.brings([...troubles, ...(rest > 0 ? [words.andMore(rest)] : [])].join(' '));
}

/** What the work of any of them calls for, said once. */
function cautionsOf(remedies: readonly Remedy[]): TemplateResult {
  const which = CAUTION_IDS.filter((id) => remedies.some((remedy) => remedy.cautions.includes(id)));
  return html`<ul class="quiet small">${which.map((id) => html`<li>${cautions[id]}</li>`)}</ul>`;
}

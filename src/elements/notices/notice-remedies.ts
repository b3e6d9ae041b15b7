/** What a notice's "What to do" unfolds to: what would mend it, tried on the season, best first, each with what it comes to. */
import { html, nothing, type ReactiveController, type ReactiveControllerHost, type TemplateResult } from 'lit';
import { CAUTION_IDS } from '../../explain/notices/cautions.ts';
import type { Notice, NoticeRemedy } from '../../explain/notices/notice.ts';
import { describeNotice } from '../../language/describe-notice.ts';
import { describeRemedy, describeRemedyEffects } from '../../language/describe-remedy.ts';
import { noticesWords } from '../../language/en/notices.ts';
import { remediesWords } from '../../language/en/remedies.ts';
import { formatFor } from '../../language/format/format.ts';
import type { Reader } from '../../language/reader.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { searchRemedies } from '../../remedies/notices/remedies-of.ts';
import type { NoticeInPlan, Remedy } from '../../remedies/notices/remedy.ts';
import { cautionItems } from '../shared/cautions-template.ts';
import { inSlices } from '../shared/in-slices.ts';

/** More side effects of a remedy than these are only counted. */
const MOST_SIDE_EFFECTS = 2;

/** What these advise has been tried: it is not said where nothing helped. */
const TRIED_ADVICE: ReadonlySet<NoticeRemedy> = new Set(['change-line', 'more-days', 'split-run', 'smaller-step']);

/** A notice is of one season; a plan that only goes by another name may share it. */
const cache = new WeakMap<Notice, { readonly plan: Plan; readonly remedies: readonly Remedy[] | 'failed' }>();

export interface RemediesShown {
  readonly reader: Reader;
  /** Left out where the plan can only be looked at. */
  readonly apply: ((edit: Edit, what: string) => void) | undefined;
}

/** Works out the remedies of the notices that somebody looks at, in slices, and keeps them until the plan changes. */
export class NoticeRemedies implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #searching = new Map<Notice, NoticeInPlan>();

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  /** Goes on with these, begins what is new among them, and gives up the others. */
  search(wanted: readonly NoticeInPlan[]): void {
    const before = new Map(this.#searching);
    this.#searching.clear();
    for (const of of wanted) {
      if (this.#found(of) !== undefined) continue;
      const running = before.get(of.notice);
      const goesOn = running?.plan === of.plan;
      this.#searching.set(of.notice, goesOn ? running : of);
      if (!goesOn) this.#begin(of);
    }
  }

  render(of: NoticeInPlan, { reader, apply }: RemediesShown): TemplateResult {
    const remedies = this.#found(of);
    const words = remediesWords(reader.language);
    if (remedies === undefined) return html`<p class="quiet" role="status">${words.searching}</p>`;
    if (remedies === 'failed') return html`<p>${words.failed}</p>`;
    if (remedies.length === 0) {
      const { remedy } = of.notice;
      const besides = TRIED_ADVICE.has(remedy) ? '' : noticesWords(reader.language).remedies[remedy];
      return html`<p>${words.none} ${besides}</p>`;
    }
    const cautions = CAUTION_IDS.filter((id) => remedies.some((remedy) => remedy.cautions.includes(id)));
    return html`<ol>
        ${remedies.map((remedy) => remedyItem(remedy, of, { reader, apply }))}
      </ol>
      <ul class="quiet small">${cautionItems(cautions, reader.language)}</ul>`;
  }

  hostDisconnected(): void {
    this.#searching.clear();
  }

  /** Undefined while they are being worked out. */
  #found({ plan, notice }: NoticeInPlan): readonly Remedy[] | 'failed' | undefined {
    const known = cache.get(notice);
    return known?.plan === plan ? known.remedies : undefined;
  }

  #begin(of: NoticeInPlan): void {
    inSlices({
      steps: searchRemedies(of),
      isWanted: () => this.#searching.get(of.notice) === of,
      onEnd: (remedies) => this.#keep(of, remedies),
      onFault: (error) => {
        reportError(error);
        this.#keep(of, 'failed');
      },
    });
  }

  #keep(of: NoticeInPlan, remedies: readonly Remedy[] | 'failed'): void {
    cache.set(of.notice, { plan: of.plan, remedies });
    this.#searching.delete(of.notice);
    this.#host.requestUpdate();
  }
}

function remedyItem(remedy: Remedy, { notice, plan }: NoticeInPlan, { reader, apply }: RemediesShown): TemplateResult {
  const words = remediesWords(reader.language);
  const what = describeRemedy(remedy, reader);
  return html`<li data-kind=${remedy.kind}>
    <p><strong>${what}</strong></p>
    <p>${describeRemedyEffects(remedy, notice, reader).join(' ')}</p>
    ${remedy.sideEffects.length === 0 ? nothing : html`<p>${sideEffectsText(remedy, plan.name, reader)}</p>`}
    ${
      apply === undefined
        ? nothing
        : html`<button aria-label=${words.applyLabel(what)} @click=${() => apply(remedy.edit, what)}>${words.apply}</button>`
    }
  </li>`;
}

function sideEffectsText({ sideEffects, seasonWith }: Remedy, gardenName: string, reader: Reader): string {
  const words = remediesWords(reader.language);
  const format = formatFor(reader);
  const sentences = sideEffects.slice(0, MOST_SIDE_EFFECTS).map((notice) => {
    const { name, sentence } = describeNotice(notice, seasonWith, gardenName, reader);
    return words.sideEffect(name, sentence);
  });
  const rest = sideEffects.length - sentences.length;
  const all = rest > 0 ? [...sentences, words.andMore(format, rest)] : sentences;
  return words.sideEffects(format, sideEffects.length, all.join(' '));
}

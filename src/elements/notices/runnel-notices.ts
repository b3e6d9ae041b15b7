import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Notice, NoticeKind, NoticeSeverity } from '../../explain/notices/notice.ts';
import { NOTICE_KINDS } from '../../explain/notices/notice-kinds.ts';
import { formatCount } from '../../language/format/count.ts';
import { formatList } from '../../language/format/list.ts';
import { controls } from '../../look/controls.styles.ts';
import { tokens } from '../../look/tokens.styles.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { hasRemedies } from '../../remedies/notices/remedied-kinds.ts';
import { cautionsTemplate } from '../shared/cautions-template.ts';
import { LatePart } from '../shared/late-part.ts';
import { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, type ReadyView, readingOf, waitingTemplate } from '../shared/plan-state.ts';
import { cautions } from '../shared/words/cautions.ts';
import { noticeWords, REMEDY_WORDS } from '../shared/words/notice-words.ts';
import { faultsTemplate } from './faults-template.ts';
import { noticeKeys } from './notice-keys.ts';
import { noticePlace } from './notice-place.ts';
import { noticeSentence } from './notice-sentence.ts';
import { noticesIn } from './notices-in.ts';
import { remedyEdit } from './remedy-edit.ts';
import { noticesStyles } from './runnel-notices.styles.ts';
import { severitySign } from './severity-sign.ts';

const SEVERITIES: readonly NoticeSeverity[] = ['danger', 'warning', 'note'];

/** More than these are folded away, worst ones in sight. */
const MOST_IN_SIGHT = 6;

/** A remedy that was taken, or taken back. */
interface Taken {
  /** The plan that came of it: once another stands there this is no news any more. */
  readonly plan: Plan;
  readonly what: string;
  /** Place in the list, and key, of the notice that it mends. */
  readonly place: number;
  readonly key: string;
  readonly isTakenBack: boolean;
}

/** A notice in the list. */
interface Listed {
  readonly notice: Notice;
  readonly key: string;
  readonly place: number;
}

/**
 * @summary What needs attention in the season, worst first, each with where it holds and what to do about it.
 *
 * Stands inside a `runnel-plan`. What would mend a notice of line or supply is worked out when its "What to do" is
 * unfolded: each change with what it comes to, to be made and undone on the spot. A file or a remedy that was refused is
 * listed above, fault by fault. The usual cautions stand at its foot.
 *
 * @fires {RunnelSelectEvent} runnel-select - A notice's cell was asked for.
 * @fires {RunnelEditEvent} runnel-edit - A notice's remedy was taken.
 * @fires {RunnelHistoryEvent} runnel-history - The remedy just taken was undone.
 *
 * @csspart title - How many things need attention.
 * @csspart remedies - What would mend one notice, best first.
 * @csspart cautions - The cautions.
 */
export class RunnelNotices extends LitElement {
  static override readonly styles = [tokens, controls, noticesStyles];

  /** Keys of the notices whose remedies are unfolded. */
  @state() private opened: ReadonlySet<string> = new Set();

  @state() private taken: Taken | undefined;

  readonly #plan = new PlanConsumer(this);
  readonly #desk = new LatePart(this, async () => {
    const { RemedyDesk } = await import('./remedy-desk.ts');
    return new RemedyDesk(this);
  });
  #list: readonly Listed[] = [];

  protected override willUpdate(): void {
    const { view } = this.#plan;
    if (this.taken?.plan !== view.plan) this.taken = undefined;
    const notices = isReady(view) ? noticesIn(view.season) : [];
    const keys = noticeKeys(notices);
    this.#list = notices.map((notice, place) => ({ notice, place, key: keys.get(notice) ?? '' }));
    const open = this.#list.filter(({ notice, key }) => this.opened.has(key) && hasRemedies(notice));
    const desk = open.length === 0 ? this.#desk.fetched : this.#desk.part;
    desk?.for(isReady(view) ? open.map(({ notice }) => ({ ...view, notice })) : []);
  }

  protected override async getUpdateComplete(): Promise<boolean> {
    const isComplete = await super.getUpdateComplete();
    return (await this.#desk.isSettled()) && isComplete;
  }

  protected override render(): TemplateResult {
    const { view } = this.#plan;
    const faults = [...view.faults, ...this.#plan.refused];
    return html`<div role="status">${faultsTemplate(faults, view.plan !== undefined, readingOf(view))}</div>
      <p class="visually-hidden" role="status">${this.#said()}</p>
      ${isReady(view) ? this.#notices(view) : waitingTemplate(view)}
      <div part="cautions">${cautionsTemplate(view.season?.garden.supply.tank !== undefined)}</div>`;
  }

  #said(): string {
    if (this.taken === undefined) return '';
    const { what, isTakenBack } = this.taken;
    return isTakenBack ? noticeWords.undone(what) : noticeWords.done(what);
  }

  #notices(view: ReadyView): TemplateResult {
    const list = this.#list;
    const rest = list.length - MOST_IN_SIGHT;
    return html`<section>
      <h2 part="title">${titleOf(
        list.map(({ notice }) => notice),
        view.locale,
      )}</h2>
      ${list.length === 0 ? html`<p class="quiet">${noticeWords.calm}</p>` : nothing}
      ${this.#items(0, MOST_IN_SIGHT, view)}
      ${
        rest > 0
          ? html`<details class="more">
              <summary>${noticeWords.more(rest)}</summary>
              ${this.#items(MOST_IN_SIGHT, list.length, view)}
            </details>`
          : nothing
      }
    </section>`;
  }

  /** Some of the notices, and among them what was done where one stood. */
  #items(from: number, to: number, view: ReadyView): TemplateResult {
    const { taken } = this;
    const place = Math.min(taken?.place ?? 0, this.#list.length);
    const isLast = place === this.#list.length && to >= place;
    const isHere = taken?.isTakenBack === false && place >= from && (place < to || isLast);
    const part = this.#list.slice(from, to);
    const before = isHere ? place - from : part.length;
    const keyed = (listed: readonly Listed[]) =>
      repeat(
        listed,
        ({ key }) => key,
        (each) => this.#notice(each, view),
      );
    return html`<ul>${keyed(part.slice(0, before))}${isHere ? this.#taken(taken) : nothing}${keyed(part.slice(before))}</ul>`;
  }

  #taken(taken: Taken): TemplateResult {
    return html`<li class="taken">
      <p tabindex="-1">${noticeWords.done(taken.what)}</p>
      <button @click=${() => void this.#takeBack(taken)}>${noticeWords.undo}</button>
    </li>`;
  }

  #notice({ notice, place, key }: Listed, view: ReadyView): TemplateResult {
    const reading = readingOf(view);
    const { kind, severity, remedy } = notice;
    const { name } = noticePlace(notice, view.season, view.plan.name, reading.locale);
    const isWorkedOut = hasRemedies(notice);
    return html`<li class="notice ${severity}" data-key=${key}>
      ${severitySign(severity)}
      <p class="severity">${noticeWords.severity[severity]}</p>
      <p><strong>${name}:</strong> ${noticeSentence(notice, view.season, reading)}</p>
      <p class="quiet small ${isWorkedOut ? 'on-paper' : ''}">${REMEDY_WORDS[remedy]} ${mindWords(kind, reading.locale)}</p>
      ${isWorkedOut ? this.#remedies({ notice, place, key }, name, view) : nothing}
      ${this.#actions({ notice, place, key }, view)}
    </li>`;
  }

  #actions({ notice, place, key }: Listed, view: ReadyView): TemplateResult {
    const { where, selection } = noticePlace(notice, view.season, view.plan.name, view.locale);
    const mend = view.readOnly ? undefined : remedyEdit(notice, view.plan, view.season);
    const show = notice.kind === 'no-climate' ? noticeWords.fillClimate : noticeWords.show(where);
    return html`<p class="actions">
      ${where === '' ? nothing : html`<button class="plain" @click=${() => this.#plan.select(selection)}>${show}</button>`}
      ${
        mend === undefined
          ? nothing
          : html`<button class="plain" @click=${() => void this.#take(mend.edit, { what: mend.label, place, key })}>${mend.label}</button>`
      }
    </p>`;
  }

  #remedies({ notice, place, key }: Listed, name: string, view: ReadyView): TemplateResult {
    const isOpen = this.opened.has(key);
    const toggled = (event: ToggleEvent) => {
      const opened = new Set(this.opened);
      if (event.newState === 'open') opened.add(key);
      else opened.delete(key);
      this.opened = opened;
    };
    return html`<details class="remedies" ?open=${isOpen} @toggle=${toggled}>
      <summary>${noticeWords.whatToDo}<span class="visually-hidden">: ${name}</span></summary>
      ${isOpen ? html`<div part="remedies">${this.#remediesIn({ notice, place, key }, view)}</div>` : nothing}
    </details>`;
  }

  #remediesIn({ notice, place, key }: Listed, view: ReadyView): TemplateResult {
    const desk = this.#desk.part;
    if (desk === undefined) return html`<p class="quiet" role="status">${this.#desk.waitingWords}</p>`;
    const apply = ({ edit }: { readonly edit: Edit }, what: string) => void this.#take(edit, { what, place, key });
    return desk.template({ ...view, notice }, { reading: readingOf(view), apply: view.readOnly ? undefined : apply });
  }

  async #take(edit: Edit, of: Pick<Taken, 'what' | 'place' | 'key'>): Promise<void> {
    const result = this.#plan.edit(edit);
    if (!result.ok || !result.changed) return;
    this.taken = { ...of, plan: result.plan, isTakenBack: false };
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>('.taken p')?.focus();
  }

  /** Back to the notice, which stands there again. */
  async #takeBack(taken: Taken): Promise<void> {
    if (!this.#plan.step('undo')) return;
    const { plan } = this.#plan.view;
    if (plan === undefined) return;
    this.taken = { ...taken, plan, isTakenBack: true };
    await this.updateComplete;
    const items = [...this.renderRoot.querySelectorAll<HTMLElement>('.notice')];
    const item = items.find((each) => each.dataset['key'] === taken.key);
    item?.querySelector<HTMLElement>('summary, button')?.focus();
  }
}

/** The cautions that a notice's remedy calls for; that every figure is to be checked at the plant is said once, at the foot. */
function mindWords(kind: NoticeKind, locale: string): string {
  const which = NOTICE_KINDS[kind].cautions.filter((caution) => caution !== 'promise');
  if (which.length === 0) return '';
  return cautions.mind(
    formatList(
      which.map((caution) => cautions.short[caution]),
      locale,
    ),
  );
}

function titleOf(notices: readonly Notice[], locale: string): string {
  const counts = SEVERITIES.map((severity) => {
    const count = notices.filter((notice) => notice.severity === severity).length;
    return count === 0 ? '' : formatCount(count, noticeWords.counted[severity], locale);
  });
  return noticeWords.title(counts.filter((count) => count !== ''));
}

export type { RunnelEventMap } from '../shared/events/runnel-events.ts';

declare global {
  interface HTMLElementTagNameMap {
    'runnel-notices': RunnelNotices;
  }
}

import { html, type LitElement, nothing, type ReactiveController, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { NoticeSeverity } from '../../explain/notices/severity.ts';
import { noticesWords } from '../../language/en/notices.ts';
import { formatFor } from '../../language/format/format.ts';
import { languageFor } from '../../language/languages.ts';
import type { Reader } from '../../language/reader.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { hasRemedies } from '../../remedies/notices/remedied-kinds.ts';
import type { PlanView } from '../../store/plan-view.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { CautionsOnce } from '../shared/cautions-once.ts';
import { cautionsTemplate } from '../shared/cautions-template.ts';
import { NoticesFoundEvent } from '../shared/events/notices-found-event.ts';
import { faultsTemplate } from '../shared/faults-template.ts';
import { LatePart } from '../shared/late-part.ts';
import { migrationTemplate } from '../shared/migration-template.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, type ReadyView, readingOf, waitingTemplate } from '../shared/plan-state.ts';
import { SeasonYears } from '../shared/season-years.ts';
import { isYearly, noticeItem } from './notice-item.ts';
import { aboutOf, type ListedNotice, NoticeList } from './notice-list.ts';
import type { NoticeRemedies } from './notice-remedies.ts';
import { noticesStyles } from './runnel-notices.styles.ts';

const SEVERITIES: readonly NoticeSeverity[] = ['danger', 'warning', 'note'];

/** More than these are folded away, worst ones in sight. */
const MOST_IN_SIGHT = 5;

/** Of those in the fold so many stand there before it is unfolded, where a search in the page finds them; a large garden has thousands. */
const READY_IN_FOLD = 24;

/** More at a time, once it is unfolded. */
const AT_A_TIME = 100;

/** Places in the list, `to` not counted. */
interface Range {
  readonly from: number;
  readonly to: number;
}

/** A remedy that was applied, or undone again. */
interface Applied {
  /** The plan that came of it: once another stands there this is no news any more. */
  readonly plan: Plan;
  readonly what: string;
  /** Of the notice that it mends. */
  readonly index: number;
  readonly key: string;
  readonly isUndone: boolean;
}

/** The list of notices, what was just done about one, and the cautions. */
export class NoticesBody implements ReactiveController {
  readonly #host: LitElement;
  readonly #plan: PlanConsumer;
  readonly #remedies: LatePart<NoticeRemedies>;
  /** Keys of the notices whose remedies are unfolded. */
  #opened: ReadonlySet<string> = new Set();
  #applied: Applied | undefined;
  readonly #finder: NoticeList;
  readonly #cautions: CautionsOnce;
  readonly #years: SeasonYears;
  /** Undefined while it is being worked out. */
  #list: readonly ListedNotice[] | undefined = [];
  #told: readonly ListedNotice[] | undefined;
  /** How many of those in the fold are wanted; 0 while it is folded. */
  #unfolded = 0;
  #isPrinted = false;

  constructor(host: LitElement, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    this.#finder = new NoticeList(host);
    this.#cautions = new CautionsOnce(host);
    this.#years = new SeasonYears(host, plan);
    host.addController(this);
    this.#remedies = new LatePart(host, plan, async () => {
      const { NoticeRemedies } = await import('./notice-remedies.ts');
      return new NoticeRemedies(host);
    });
    adoptStyles(host.renderRoot, noticesStyles);
  }

  hostConnected(): void {
    globalThis.addEventListener('beforeprint', this.#toPaper);
    globalThis.addEventListener('afterprint', this.#fromPaper);
    this.#host.requestUpdate();
  }

  hostDisconnected(): void {
    globalThis.removeEventListener('beforeprint', this.#toPaper);
    globalThis.removeEventListener('afterprint', this.#fromPaper);
    this.#finder.giveUp();
  }

  // At once: the paper is laid out as soon as this returns.
  readonly #toPaper = (): void => this.#print(true);
  readonly #fromPaper = (): void => this.#print(false);

  #print(isPrinted: boolean): void {
    this.#isPrinted = isPrinted;
    this.#host.requestUpdate();
    if (isPrinted) (this.#host as unknown as { performUpdate(): void }).performUpdate();
  }

  /** Waits for notices that are looked for and remedies that are fetched; false where there was something to wait for. */
  async isSettled(): Promise<boolean> {
    const isFound = await this.#finder.isSettled();
    return (await this.#remedies.isSettled()) && isFound;
  }

  #follow(view: PlanView): void {
    if (this.#applied?.plan !== view.plan) this.#applied = undefined;
    if (!isReady(view)) this.#finder.giveUp();
    this.#list = isReady(view) ? this.#finder.of(view.season) : [];
    const open = (this.#list ?? []).filter(({ notice, key }) => this.#opened.has(key) && hasRemedies(notice));
    if (view.plan?.site.years !== undefined && this.#list?.some(isYearly) === true) this.#years.compareSoon();
    const remedies = open.length === 0 ? this.#remedies.fetched : this.#remedies.part;
    remedies?.search(isReady(view) ? open.map(({ notice }) => ({ ...view, notice })) : []);
  }

  render(): TemplateResult {
    const { view } = this.#plan;
    this.#follow(view);
    const reader = readingOf(view);
    const planStays = view.plan !== undefined;
    return html`<div role="status">${faultsTemplate('file', view.faults, reader, planStays)}
        ${faultsTemplate('edit', this.#plan.refused, reader, planStays)}
        ${migrationTemplate(view.migration, reader)}</div>
      <p class="visually-hidden" role="status">${this.#announcement()}</p>
      ${isReady(view) ? this.#notices(view) : waitingTemplate(view)}
      <div part="cautions">${cautionsTemplate(this.#cautions.of(view.season?.garden.supply.tank !== undefined), reader.language)}</div>`;
  }

  /** What was just done, for a screen reader. */
  #announcement(): string {
    if (this.#applied === undefined) return '';
    const { what, isUndone } = this.#applied;
    const words = noticesWords(languageFor(this.#plan.view.locale));
    return isUndone ? words.undone(what) : words.done(what);
  }

  #notices(view: ReadyView): TemplateResult {
    const list = this.#list;
    const reader = readingOf(view);
    const words = noticesWords(reader.language);
    this.#tell(list);
    if (list === undefined) return html`<p class="waiting" role="status">${words.looking}</p>`;
    const rest = list.length - MOST_IN_SIGHT;
    return html`<section>
      <h2 part="title">${this.#title(list, reader)}</h2>
      ${list.length === 0 ? html`<p class="quiet">${words.calm}</p>` : nothing}
      ${this.#items(list, { from: 0, to: MOST_IN_SIGHT }, view)}
      ${rest > 0 ? this.#fold(list, rest, view) : nothing}
    </section>`;
  }

  /** Tells whoever shows this list how many are urgent: it may stand in a tab that is not open. */
  #tell(list: readonly ListedNotice[] | undefined): void {
    if (list === undefined || list === this.#told) return;
    this.#told = list;
    const urgent = list.filter(({ notice }) => notice.severity === 'danger').length;
    this.#host.dispatchEvent(new NoticesFoundEvent(urgent, list.length));
  }

  #fold(list: readonly ListedNotice[], rest: number, view: ReadyView): TemplateResult {
    const reader = readingOf(view);
    const words = noticesWords(reader.language);
    const wanted = this.#isPrinted ? rest : Math.max(READY_IN_FOLD, this.#unfolded);
    const beyond = rest - wanted;
    const toggled = (event: ToggleEvent) => this.#unfold(event.newState === 'open' ? AT_A_TIME : 0);
    return html`<details class="more" ?open=${this.#unfolded > 0} @toggle=${toggled}>
      <summary>${words.more(formatFor(reader), rest)}</summary>
      ${this.#byKind(list, { from: MOST_IN_SIGHT, to: Math.min(list.length, MOST_IN_SIGHT + wanted) }, view)}
      ${
        beyond > 0
          ? html`<p class="actions"><button class="plain" @click=${() => this.#unfold(this.#unfolded + AT_A_TIME)}>${words.next(formatFor(reader), Math.min(AT_A_TIME, beyond), beyond)}</button></p>`
          : nothing
      }
    </details>`;
  }

  /** Those in the fold under what they are about: neighbours in the list that are about the same stand together. */
  #byKind(list: readonly ListedNotice[], { from, to }: Range, view: ReadyView): readonly TemplateResult[] {
    const words = noticesWords(readingOf(view).language);
    const starts = list.slice(from, to).flatMap((each, at) => {
      const before = at === 0 ? undefined : list[from + at - 1];
      return before !== undefined && aboutOf(before) === aboutOf(each) ? [] : [from + at];
    });
    return starts.map((start, at) => {
      const first = list[start];
      return html`<h3 class="about">${first === undefined ? '' : words.about[aboutOf(first)]}</h3>
        ${this.#items(list, { from: start, to: starts[at + 1] ?? to }, view)}`;
    });
  }

  #unfold(wanted: number): void {
    if (wanted > 0 && wanted === this.#unfolded) return;
    this.#unfolded = wanted;
    this.#host.requestUpdate();
  }

  #title(list: readonly ListedNotice[], reader: Reader): string {
    const words = noticesWords(reader.language);
    const counts = SEVERITIES.flatMap((severity) => {
      const count = list.filter(({ notice }) => notice.severity === severity).length;
      return count === 0 ? [] : [words.counted[severity](formatFor(reader), count)];
    });
    return counts.length === 0 ? words.calmTitle : words.title(formatFor(reader), counts);
  }

  /** Some of the notices, and among them what was done where one stood. */
  #items(list: readonly ListedNotice[], { from, to }: Range, view: ReadyView): TemplateResult {
    const applied = this.#applied;
    const index = Math.min(applied?.index ?? 0, list.length);
    const isLast = index === list.length && to >= index;
    const isHere = applied?.isUndone === false && index >= from && (index < to || isLast);
    const part = list.slice(from, to);
    const before = isHere ? index - from : part.length;
    const keyed = (listed: readonly ListedNotice[]) =>
      repeat(
        listed,
        ({ key }) => key,
        (each) => this.#item(each, view),
      );
    return html`<ul>${keyed(part.slice(0, before))}${isHere ? this.#done(applied) : nothing}${keyed(part.slice(before))}</ul>`;
  }

  #done(applied: Applied): TemplateResult {
    const words = noticesWords(languageFor(this.#plan.view.locale));
    return html`<li class="taken">
      <p tabindex="-1">${words.done(applied.what)}</p>
      <button @click=${() => void this.#undo(applied)}>${words.undo}</button>
    </li>`;
  }

  #item(listed: ListedNotice, view: ReadyView): TemplateResult {
    return noticeItem({
      listed,
      view,
      select: (selection) => this.#plan.select(selection),
      apply: ({ edit }, label) => void this.#apply(edit, label, listed),
      remedies: (name) => this.#remediesOf(listed, name, view),
      years: this.#years.state,
    });
  }

  #remediesOf(listed: ListedNotice, name: string, view: ReadyView): TemplateResult {
    const { notice, key } = listed;
    const isOpen = this.#opened.has(key);
    const reader = readingOf(view);
    const toggled = (event: ToggleEvent) => {
      const opened = new Set(this.#opened);
      if (event.newState === 'open') opened.add(key);
      else opened.delete(key);
      this.#opened = opened;
      this.#host.requestUpdate();
    };
    const content = () => {
      const part = this.#remedies.part;
      if (part === undefined) return html`<p class="quiet" role="status">${this.#remedies.waitingWords}</p>`;
      const apply = (edit: Edit, what: string) => void this.#apply(edit, what, listed);
      return part.render({ ...view, notice }, { reader, apply: view.readOnly ? undefined : apply });
    };
    return html`<details class="remedies" ?open=${isOpen} @toggle=${toggled}>
      <summary>${noticesWords(reader.language).whatToDo}<span class="visually-hidden">: ${name}</span></summary>
      ${isOpen ? html`<div part="remedies">${content()}</div>` : nothing}
    </details>`;
  }

  async #apply(edit: Edit, what: string, { index, key }: ListedNotice): Promise<void> {
    const result = await this.#plan.edit(edit);
    if (!result.ok || !result.changed) return;
    this.#applied = { what, index, key, plan: result.plan, isUndone: false };
    this.#host.requestUpdate();
    await this.#host.updateComplete;
    this.#host.renderRoot.querySelector<HTMLElement>('.taken p')?.focus();
  }

  /** Back to the notice, which stands there again. */
  async #undo(applied: Applied): Promise<void> {
    if (!(await this.#plan.step('undo'))) return;
    const { plan } = this.#plan.view;
    if (plan === undefined) return;
    this.#applied = { ...applied, plan, isUndone: true };
    this.#host.requestUpdate();
    await this.#host.updateComplete;
    const items = [...this.#host.renderRoot.querySelectorAll<HTMLElement>('.notice')];
    const item = items.find((each) => each.dataset['key'] === applied.key);
    item?.querySelector<HTMLElement>('summary, button')?.focus();
  }
}

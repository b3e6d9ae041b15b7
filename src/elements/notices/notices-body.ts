import { html, type LitElement, nothing, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { NoticeSeverity } from '../../explain/notices/severity.ts';
import { noticesWords } from '../../language/en/notices.ts';
import { formatFor } from '../../language/format/format.ts';
import { languageFor } from '../../language/languages.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { hasRemedies } from '../../remedies/notices/remedied-kinds.ts';
import type { PlanView } from '../../store/plan-view.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { cautionsTemplate } from '../shared/cautions-template.ts';
import { faultsTemplate } from '../shared/faults-template.ts';
import { LatePart } from '../shared/late-part.ts';
import { migrationTemplate } from '../shared/migration-template.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, type ReadyView, readingOf, waitingTemplate } from '../shared/plan-state.ts';
import { noticeItem } from './notice-item.ts';
import { type ListedNotice, noticeList } from './notice-list.ts';
import type { NoticeRemedies } from './notice-remedies.ts';
import { noticesStyles } from './runnel-notices.styles.ts';

const SEVERITIES: readonly NoticeSeverity[] = ['danger', 'warning', 'note'];

/** More than these are folded away, worst ones in sight. */
const MOST_IN_SIGHT = 6;

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
export class NoticesBody {
  readonly #host: LitElement;
  readonly #plan: PlanConsumer;
  readonly #remedies: LatePart<NoticeRemedies>;
  /** Keys of the notices whose remedies are unfolded. */
  #opened: ReadonlySet<string> = new Set();
  #applied: Applied | undefined;
  #list: readonly ListedNotice[] = [];

  constructor(host: LitElement, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    this.#remedies = new LatePart(host, plan, async () => {
      const { NoticeRemedies } = await import('./notice-remedies.ts');
      return new NoticeRemedies(host);
    });
    adoptStyles(host.renderRoot, noticesStyles);
  }

  /** Waits for remedies that are being fetched; false where there was something to wait for. */
  isSettled(): Promise<boolean> {
    return this.#remedies.isSettled();
  }

  #follow(view: PlanView): void {
    if (this.#applied?.plan !== view.plan) this.#applied = undefined;
    this.#list = isReady(view) ? noticeList(view.season) : [];
    const open = this.#list.filter(({ notice, key }) => this.#opened.has(key) && hasRemedies(notice));
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
      <div part="cautions">${cautionsTemplate(view.season?.garden.supply.tank !== undefined, reader.language)}</div>`;
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
    const rest = list.length - MOST_IN_SIGHT;
    const reader = readingOf(view);
    const words = noticesWords(reader.language);
    return html`<section>
      <h2 part="title">${this.#title(view)}</h2>
      ${list.length === 0 ? html`<p class="quiet">${words.calm}</p>` : nothing}
      ${this.#items(0, MOST_IN_SIGHT, view)}
      ${
        rest > 0
          ? html`<details class="more">
              <summary>${words.more(formatFor(reader), rest)}</summary>
              ${this.#items(MOST_IN_SIGHT, list.length, view)}
            </details>`
          : nothing
      }
    </section>`;
  }

  #title(view: ReadyView): string {
    const reader = readingOf(view);
    const words = noticesWords(reader.language);
    const counts = SEVERITIES.flatMap((severity) => {
      const count = this.#list.filter(({ notice }) => notice.severity === severity).length;
      return count === 0 ? [] : [words.counted[severity](formatFor(reader), count)];
    });
    return counts.length === 0 ? words.calmTitle : words.title(formatFor(reader), counts);
  }

  /** Some of the notices, and among them what was done where one stood. */
  #items(from: number, to: number, view: ReadyView): TemplateResult {
    const applied = this.#applied;
    const index = Math.min(applied?.index ?? 0, this.#list.length);
    const isLast = index === this.#list.length && to >= index;
    const isHere = applied?.isUndone === false && index >= from && (index < to || isLast);
    const part = this.#list.slice(from, to);
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
    const result = this.#plan.edit(edit);
    if (!result.ok || !result.changed) return;
    this.#applied = { what, index, key, plan: result.plan, isUndone: false };
    this.#host.requestUpdate();
    await this.#host.updateComplete;
    this.#host.renderRoot.querySelector<HTMLElement>('.taken p')?.focus();
  }

  /** Back to the notice, which stands there again. */
  async #undo(applied: Applied): Promise<void> {
    if (!this.#plan.step('undo')) return;
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

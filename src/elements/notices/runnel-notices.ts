import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { cautionsOf } from '../../engine/notices/cautions.ts';
import type { Notice, NoticeKind, NoticeSeverity } from '../../engine/notices/notice.ts';
import { cautionsTemplate } from '../shared/cautions-template.ts';
import { controls } from '../shared/controls.styles.ts';
import { formatCount } from '../shared/format/count.ts';
import { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, type ReadyView, readingOf, waitingTemplate } from '../shared/plan-state.ts';
import { tokens } from '../shared/tokens.styles.ts';
import { cautions } from '../shared/words/cautions.ts';
import { noticeWords, REMEDY_WORDS } from '../shared/words/notice-words.ts';
import { faultsTemplate } from './faults-template.ts';
import { noticePlace } from './notice-place.ts';
import { noticeSentence } from './notice-sentence.ts';
import { noticesIn } from './notices-in.ts';
import { remedyEdit } from './remedy-edit.ts';
import { noticesStyles } from './runnel-notices.styles.ts';
import { severitySign } from './severity-sign.ts';

const SEVERITIES: readonly NoticeSeverity[] = ['danger', 'warning', 'note'];

/** More than these are folded away, worst ones in sight. */
const MOST_IN_SIGHT = 6;

/**
 * @summary What needs attention in the season, worst first, each with where it holds and what to do about it.
 *
 * Stands inside a `runnel-plan`. A file or an edit that was refused is listed above, fault by fault. The usual cautions
 * stand at its foot.
 *
 * @fires {RunnelSelectEvent} runnel-select - A notice's cell was asked for.
 * @fires {RunnelEditEvent} runnel-edit - A notice's remedy was taken.
 *
 * @csspart title - How many things need attention.
 * @csspart cautions - The cautions.
 */
export class RunnelNotices extends LitElement {
  static override readonly styles = [tokens, controls, noticesStyles];

  readonly #plan = new PlanConsumer(this);

  protected override render(): TemplateResult {
    const { view } = this.#plan;
    return html`<div role="status">${faultsTemplate(view.faults, view.plan !== undefined)}</div>
      ${isReady(view) ? this.#notices(view) : waitingTemplate(view)}
      <div part="cautions">${cautionsTemplate(view.season?.garden.supply.tank !== undefined)}</div>`;
  }

  #notices(view: ReadyView): TemplateResult {
    const notices = noticesIn(view.season);
    const items = notices.map((notice) => this.#notice(notice, view));
    const rest = items.length - MOST_IN_SIGHT;
    return html`<section>
      <h2 part="title">${titleOf(notices, view.locale)}</h2>
      ${notices.length === 0 ? html`<p class="quiet">${noticeWords.calm}</p>` : nothing}
      <ul>${items.slice(0, MOST_IN_SIGHT)}</ul>
      ${
        rest > 0
          ? html`<details class="more">
              <summary>${noticeWords.more(rest)}</summary>
              <ul>${items.slice(MOST_IN_SIGHT)}</ul>
            </details>`
          : nothing
      }
    </section>`;
  }

  #notice(notice: Notice, view: ReadyView): TemplateResult {
    const reading = readingOf(view);
    const { kind, severity, remedy } = notice;
    const { name, where, selection } = noticePlace(notice, view.season, view.plan.name, reading.locale);
    const mend = view.readOnly ? undefined : remedyEdit(notice, view.plan, view.season);
    return html`<li class="notice ${severity}">
      ${severitySign(severity)}
      <p class="severity">${noticeWords.severity[severity]}</p>
      <p><strong>${name}:</strong> ${noticeSentence(notice, view.season, reading)}</p>
      <p class="quiet small">${REMEDY_WORDS[remedy]} ${mindWords(kind, reading.locale)}</p>
      <p class="actions">
        ${where === '' ? nothing : html`<button class="plain" @click=${() => this.#plan.select(selection)}>${noticeWords.show(where)}</button>`}
        ${mend === undefined ? nothing : html`<button class="plain" @click=${() => this.#plan.edit(mend.edit)}>${mend.label}</button>`}
      </p>
    </li>`;
  }
}

/** The cautions that a notice's remedy calls for; that every figure is to be checked at the plant is said once, at the foot. */
function mindWords(kind: NoticeKind, locale: string): string {
  const which = cautionsOf(kind).filter((caution) => caution !== 'promise');
  if (which.length === 0) return '';
  return cautions.mind(new Intl.ListFormat(locale).format(which.map((caution) => cautions.short[caution])));
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

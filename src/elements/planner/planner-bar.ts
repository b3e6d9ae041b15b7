import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { describeEdit } from '../../language/describe-edit.ts';
import { planElementWords } from '../../language/en/plan-element.ts';
import { plannerWords } from '../../language/en/planner.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolated } from '../../language/format/isolated.ts';
import { controls } from '../../look/controls.styles.ts';
import { tokens } from '../../look/tokens.styles.ts';
import type { Step } from '../../plan/history/history.ts';
import type { PlanView } from '../../store/plan-view.ts';
import { RunnelOpenEvent } from '../shared/events/open-event.ts';
import { fileButton } from '../shared/file-button.ts';
import { PlanConsumer } from '../shared/plan-consumer.ts';
import { readingOf } from '../shared/plan-state.ts';
import { PLAN_FILES, savePlan } from '../shared/save-plan.ts';
import { ShowPartEvent } from './show-part-event.ts';

/**
 * The planner's head: the plan's name and season, its file, undo and redo. Internal to `runnel-planner`.
 *
 * @fires {RunnelHistoryEvent} runnel-history - Undo or redo was pressed.
 * @fires {RunnelOpenEvent} runnel-open - A file was chosen.
 * @fires {ShowPartEvent} runnel-show-part - What was refused is to be shown.
 */
export class PlannerBar extends LitElement {
  static override readonly styles = [
    tokens,
    controls,
    css`
      :host {
        position: relative;
      }

      header {
        display: flex;
        flex-wrap: wrap;
        gap: 0.5rem 1.5rem;
        align-items: center;
        justify-content: space-between;
      }

      .heading {
        display: flex;
        flex: 1 1 20rem;
        flex-wrap: wrap;
        gap: 0 1rem;
        align-items: baseline;
        min-inline-size: 0;
      }

      h1 {
        margin: 0;
        font-size: calc(var(--_size) * 1.5);
        font-weight: 700;
        line-height: 1.2;
        overflow-wrap: anywhere;
      }

      .actions {
        display: flex;
        flex-wrap: wrap;
        gap: 0.4rem;
      }

      .refused {
        display: flex;
        flex-wrap: wrap;
        gap: 0.25rem 1rem;
        margin-block-start: 0.5rem;
        padding-inline-start: 0.75rem;
        border-inline-start: 4px solid var(--_short);
      }

      @media print {
        .actions,
        .refused {
          display: none;
        }
      }
    `,
  ];

  readonly #plan = new PlanConsumer(this);

  protected override render(): TemplateResult {
    const { view } = this.#plan;
    const { plan, status, readOnly, faults } = view;
    const { language } = readingOf(view);
    const say = plannerWords(language);
    return html`<header>
        <div class="heading">
          <h1>${plan === undefined ? say.unnamed : isolated(plan.name)}</h1>
          <p class="quiet">${seasonLine(view)}</p>
        </div>
        ${plan !== undefined && status === 'loading' ? html`<p class="quiet" role="status">${planElementWords(language).loading}</p>` : nothing}
        <div class="actions">
          ${readOnly ? nothing : this.#editing(view)}
          ${plan === undefined ? nothing : html`<button @click=${() => savePlan(plan)}>${say.save}</button>`}
          ${view.fromLink === true ? html`<runnel-planner-link></runnel-planner-link>` : nothing}
        </div>
      </header>
      <div role="alert">${faults.length === 0 ? nothing : this.#refused(view)}</div>`;
  }

  #editing(view: PlanView): TemplateResult {
    const { canUndo, canRedo, undoStep, redoStep } = view;
    const reader = readingOf(view);
    const say = plannerWords(reader.language);
    const what = (step: Step | undefined) =>
      step === undefined ? nothing : describeEdit(step.before, step.edit, reader);
    return html`<button ?disabled=${!canUndo} title=${what(undoStep)}
        @click=${() => this.#plan.step('undo')}>${say.undo}</button>
      <button ?disabled=${!canRedo} title=${what(redoStep)}
        @click=${() => this.#plan.step('redo')}>${say.redo}</button>
      ${fileButton({
        words: say.open,
        accept: PLAN_FILES,
        onFile: (file) => this.dispatchEvent(new RunnelOpenEvent(file)),
      })}`;
  }

  #refused(view: PlanView): TemplateResult {
    const reader = readingOf(view);
    const say = plannerWords(reader.language);
    return html`<p class="refused">
      <span>${say.refused(formatFor(reader), view.faults.length)}</span>
      <button class="plain" @click=${() => this.dispatchEvent(new ShowPartEvent('notices'))}>${say.seeFaults}</button>
    </p>`;
  }
}

function seasonLine(view: PlanView): string {
  const { season } = view;
  if (season === undefined) return '';
  const reader = readingOf(view);
  const { firstDay, weeks } = season.garden.span;
  const plantings = season.zones.reduce((sum, zone) => sum + zone.plantings.length, 0);
  return plannerWords(reader.language).season(formatFor(reader), weeks, firstDay, season.zones.length, plantings);
}

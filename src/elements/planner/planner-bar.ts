import { css, html, nothing, type TemplateResult } from 'lit';
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
import { LatePart } from '../shared/late-part.ts';
import { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, readingOf } from '../shared/plan-state.ts';
import { PLAN_FILES, savePlan } from '../shared/save-plan.ts';
import { ViewElement } from '../shared/view-element.ts';
import { NewPlanEvent } from './new-plan-event.ts';
import { ShowPartEvent } from './show-part-event.ts';

/**
 * The planner's head: the plan's name and season, its file, undo and redo. Internal to `runnel-planner`.
 *
 * @fires {RunnelHistoryEvent} runnel-history - Undo or redo was pressed.
 * @fires {NewPlanEvent} runnel-new-plan - The way to begin a plan is asked for.
 * @fires {RunnelOpenEvent} runnel-open - A file was chosen.
 * @fires {ShowPartEvent} runnel-show-part - What was refused is to be shown.
 */
export class PlannerBar extends ViewElement {
  /** Beside the buttons there is a line for the name alone; on a phone the name has one of its own. */
  static override readonly styles = [
    tokens,
    controls,
    css`
      :host {
        container-type: inline-size;
        position: relative;
      }

      header {
        display: flex;
        flex-wrap: wrap;
        gap: 0.25rem 1.5rem;
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
        font-size: calc(var(--_size) * 1.27);
        font-weight: 650;
        line-height: 1.2;
        overflow-wrap: anywhere;
      }

      .heading p {
        font-size: var(--_size-small);
      }

      .actions {
        display: flex;
        flex-wrap: wrap;
        gap: 0.4rem;
      }

      .actions button {
        min-block-size: 1.9rem;
        border-color: var(--_line);
        font-size: var(--_size-small);
      }

      @media (pointer: coarse) {
        .actions button {
          min-block-size: 2.75rem;
        }
      }

      .refused {
        display: flex;
        flex-wrap: wrap;
        gap: 0.25rem 1rem;
        margin-block-start: 0.5rem;
        padding-inline-start: 0.75rem;
        border-inline-start: 4px solid var(--_short);
      }

      @container (max-width: 1040px) {
        .heading .quiet {
          display: none;
        }
      }

      @container (max-width: 699px) {
        header {
          flex-wrap: nowrap;
          gap: 0.5rem;
        }

        .heading {
          flex: 1 1 0;
        }

        h1 {
          font-size: calc(var(--_size) * 1.1);
        }

        .file {
          display: none;
        }

        .actions {
          flex-wrap: nowrap;
          gap: 0.2rem;
        }

        .actions button {
          padding-inline: 0.5rem;
        }
      }

      @container (max-width: 479px) {
        header {
          flex-wrap: wrap;
          gap: 0 0.5rem;
        }

        .heading {
          flex-basis: 100%;
        }
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
  /** What a step did, in words: fetched once there is a step. */
  readonly #describeEdit = new LatePart(
    this,
    this.#plan,
    async () => (await import('../../language/describe-edit.ts')).describeEdit,
  );

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
          ${plan === undefined ? nothing : html`<span class=${fileClass(view)}><button @click=${() => savePlan(plan)}>${say.save}</button></span>`}
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
      step === undefined ? nothing : (this.#describeEdit.part?.(step.before, step.edit, reader) ?? nothing);
    return html`<button ?disabled=${!canUndo} title=${what(undoStep)}
        @click=${() => this.#plan.step('undo')}>${say.undo}</button>
      <button ?disabled=${!canRedo} title=${what(redoStep)}
        @click=${() => this.#plan.step('redo')}>${say.redo}</button>
      <button @click=${() => this.dispatchEvent(new NewPlanEvent())}>${say.newPlan}</button>
      <span class=${fileClass(view)}>${fileButton({
        words: say.open,
        accept: PLAN_FILES,
        onFile: (file) => this.dispatchEvent(new RunnelOpenEvent(file)),
      })}</span>`;
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

/** On a narrow screen a plan's file stands in the view of files, once there are views. */
function fileClass(view: PlanView): string {
  return isReady(view) ? 'file' : '';
}

function seasonLine(view: PlanView): string {
  const { season } = view;
  if (season === undefined) return '';
  const reader = readingOf(view);
  const { firstDay, weeks } = season.garden.span;
  const plantings = season.zones.reduce((sum, zone) => sum + zone.plantings.length, 0);
  return plannerWords(reader.language).season(formatFor(reader), weeks, firstDay, season.zones.length, plantings);
}

import { html, type LitElement, nothing, type TemplateResult } from 'lit';
import type { SheetView } from '../../sheet/sheet-view.ts';
import type { PlanView } from '../../store/plan-view.ts';
import { faultsTemplate } from '../notices/faults-template.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { RunnelOpenEvent } from '../shared/events/open-event.ts';
import { fileButton } from '../shared/file-button.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, type ReadyView, readingOf, waitingTemplate } from '../shared/plan-state.ts';
import { fileNameOf, saveFile } from '../shared/save-file.ts';
import { PLAN_FILES, savePlan } from '../shared/save-plan.ts';
import { filesWords } from '../shared/words/files-words.ts';
import { gridWords } from '../shared/words/grid-words.ts';
import { intakeStatus, previewTemplate, refusedTemplate } from './intake-template.ts';
import { loadCsvWork } from './load-csv-work.ts';
import { filesStyles } from './runnel-files.styles.ts';
import { csvChoice, EXTENTS, type Extent } from './season-file.ts';
import { TableIntake } from './table-intake.ts';

/** What a table's file is told by. */
const TABLE_FILES = '.csv,.tsv,.txt,text/csv,text/plain';

/** The element whose content this is. */
export interface FilesHost extends LitElement {
  readonly sheetView: SheetView | undefined;
}

/** The plan as a file, the season as a table, tables in, and paper. */
export class FilesBody {
  readonly #host: FilesHost;
  readonly #plan: PlanConsumer;
  readonly #intake: TableIntake;
  #extent: Extent | undefined;
  /** Whether a plan file was chosen here, so that its faults belong here. */
  #hasOpened = false;
  #isDraggedOver = false;
  #hasFailed = false;

  constructor(host: FilesHost, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    adoptStyles(host.renderRoot, filesStyles);
    this.#intake = new TableIntake(host, plan);
  }

  #focus(): void {
    this.#host.renderRoot.querySelector<HTMLElement>('.drop button')?.focus();
  }

  #pasted(): string {
    return this.#host.renderRoot.querySelector('textarea')?.value ?? '';
  }

  #openPlan(file: File): void {
    this.#hasOpened = true;
    this.#host.requestUpdate();
    this.#host.dispatchEvent(new RunnelOpenEvent(file));
  }

  async #saveTable(extent: Extent): Promise<void> {
    const work = await loadCsvWork();
    const { view } = this.#plan;
    this.#hasFailed = work === undefined;
    this.#host.requestUpdate();
    if (work === undefined || !isReady(view)) return;
    const text = work.seasonToCsv(view.season, csvChoice(extent, view, this.#host.sheetView));
    // The mark tells spreadsheets that names are in UTF-8.
    saveFile(filesWords.seasonFile(fileNameOf(view.plan.name)), `\uFEFF${text}`, 'text/csv;charset=utf-8');
  }

  readonly #onDrag = (event: DragEvent): void => {
    if (!event.dataTransfer?.types.includes('Files')) return;
    event.preventDefault();
    const isOver = event.type === 'dragover';
    // It is told many times a second while a file hangs there.
    if (isOver !== this.#isDraggedOver) this.#host.requestUpdate();
    this.#isDraggedOver = isOver;
    const file = event.type === 'drop' ? event.dataTransfer.files[0] : undefined;
    if (file !== undefined) void this.#intake.openFile(file);
  };

  readonly #actions = {
    readIn: (...of: Parameters<TableIntake['readIn']>) => this.#intake.readIn(...of),
    takeIn: () => {
      if (this.#intake.takeIn()) this.#focus();
    },
    cancel: () => {
      this.#intake.cancel();
      this.#focus();
    },
    undo: () => {
      this.#plan.step('undo');
      this.#focus();
    },
  };

  render(): TemplateResult {
    const { view } = this.#plan;
    return html`<h2 part="title">${filesWords.title}</h2>
      <div class="parts">
        ${this.#planPart(view)}
        ${isReady(view) ? html`${this.#outPart(view)} ${this.#paperPart()}` : waitingTemplate(view)}
      </div>
      ${isReady(view) && !view.readOnly ? this.#inPart(view) : nothing}`;
  }

  #planPart(view: PlanView): TemplateResult {
    const { plan, readOnly, faults } = view;
    const open = fileButton({ words: filesWords.open, accept: PLAN_FILES, onFile: (file) => this.#openPlan(file) });
    return html`<section>
      <h3>${filesWords.planTitle}</h3>
      <p>${filesWords.planSays}</p>
      <div class="actions">
        ${readOnly ? nothing : open}
        ${plan === undefined ? nothing : html`<button @click=${() => savePlan(plan)}>${filesWords.save}</button>`}
      </div>
      <div role="alert">${this.#hasOpened ? faultsTemplate(faults, plan !== undefined, readingOf(view)) : nothing}</div>
    </section>`;
  }

  #outPart({ plan }: ReadyView): TemplateResult {
    const names = filesWords.extents(plan.units === 'us' ? gridWords.gallons : gridWords.litres);
    const extents = EXTENTS.filter((extent) => extent !== 'shown' || this.#host.sheetView !== undefined);
    const chosen = extents.find((extent) => extent === this.#extent) ?? extents[0] ?? 'all';
    const choose = (event: Event) => {
      this.#extent = (event.target as HTMLSelectElement).value as Extent;
      this.#host.requestUpdate();
    };
    return html`<section>
      <h3>${filesWords.outTitle}</h3>
      <p>${filesWords.outSays}</p>
      <div class="actions">
        <label>${filesWords.extent}
          <select @change=${choose}>
            ${extents.map((extent) => html`<option value=${extent} ?selected=${extent === chosen}>${names[extent]}</option>`)}
          </select></label>
        <button @click=${() => this.#saveTable(chosen)}>${filesWords.saveTable}</button>
      </div>
      <div role="alert">${this.#hasFailed ? html`<p class="refused">${filesWords.notFetched}</p>` : nothing}</div>
    </section>`;
  }

  #paperPart(): TemplateResult {
    return html`<section>
      <h3>${filesWords.paperTitle}</h3>
      <p>${filesWords.paperSays}</p>
      <div class="actions"><button @click=${() => globalThis.print()}>${filesWords.print}</button></div>
    </section>`;
  }

  #inPart(view: ReadyView): TemplateResult {
    const { intake } = this.#intake;
    const status = intakeStatus(intake, view);
    const canUndo = intake.step === 'taken' && view.plan === intake.after && view.canUndo;
    return html`<section class="in">
      <h3>${filesWords.inTitle}</h3>
      <p>${filesWords.inSays}</p>
      <dl>${filesWords.kinds.map(([kind, form]) => html`<div><dt>${kind}</dt><dd>${form}</dd></div>`)}</dl>
      <p class="quiet">${filesWords.form}</p>
      <div part="drop" class=${this.#isDraggedOver ? 'drop over' : 'drop'} @dragover=${this.#onDrag} @dragleave=${this.#onDrag} @drop=${this.#onDrag}>
        ${fileButton({ words: filesWords.choose, accept: TABLE_FILES, onFile: (file) => void this.#intake.openFile(file) })}
        <span class="quiet">${filesWords.drop}</span>
        ${this.#pasteTemplate()}
      </div>
      <div class="status">
        <p role="status">${status}</p>
        ${canUndo ? html`<button class="plain" @click=${this.#actions.undo}>${filesWords.undo}</button>` : nothing}
      </div>
      <div role="alert">${refusedTemplate(intake)}</div>
      ${previewTemplate(intake, view, this.#actions)}
    </section>`;
  }

  #pasteTemplate(): TemplateResult {
    return html`<details>
      <summary>${filesWords.pasteInstead}</summary>
      <label>${filesWords.pasted}
        <textarea rows="5" data-runnel-waits spellcheck="false" autocomplete="off"></textarea></label>
      <button @click=${() => void this.#intake.openText(this.#pasted())}>${filesWords.read}</button>
    </details>`;
  }
}

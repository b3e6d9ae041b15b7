import { html, type LitElement, nothing, type TemplateResult } from 'lit';
import type { UnitSystem } from '../../engine/units.ts';
import type { FormChoice } from '../../exchange/csv/table-form.ts';
import { filesWords } from '../../language/en/files.ts';
import type { SheetView } from '../../sheet/sheet-view.ts';
import type { PlanView } from '../../store/plan-view.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { RunnelOpenEvent } from '../shared/events/open-event.ts';
import { faultsTemplate } from '../shared/faults-template.ts';
import { fileButton } from '../shared/file-button.ts';
import { migrationTemplate } from '../shared/migration-template.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, type ReadyView, readingOf, waitingTemplate } from '../shared/plan-state.ts';
import { fileNameOf, saveFile } from '../shared/save-file.ts';
import { PLAN_FILES, savePlan } from '../shared/save-plan.ts';
import { importStatus, previewTemplate, refusedTemplate } from './import-template.ts';
import { filesStyles } from './runnel-files.styles.ts';
import { csvChoice, EXTENTS, type Extent } from './season-file.ts';
import { loadCsvWork, TableImport } from './table-import.ts';

/** What a table's file is told by. */
const TABLE_FILES = '.csv,.tsv,.txt,text/csv,text/plain';

/** The element whose content this is. */
export interface FilesHost extends LitElement {
  readonly sheetView: SheetView | undefined;
}

/** The plan as a file, the season as a table, import of tables, and paper. */
export class FilesBody {
  readonly #host: FilesHost;
  readonly #plan: PlanConsumer;
  readonly #import: TableImport;
  #extent: Extent | undefined;
  /** Whether a plan file was chosen here, so that its faults belong here. */
  #hasOpened = false;
  #isDraggedOver = false;
  #hasFailed = false;

  constructor(host: FilesHost, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    adoptStyles(host.renderRoot, filesStyles);
    this.#import = new TableImport(host, plan);
  }

  get #say() {
    return filesWords(readingOf(this.#plan.view).language);
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
    saveFile(this.#say.seasonFile(fileNameOf(view.plan.name)), `\uFEFF${text}`, 'text/csv;charset=utf-8');
  }

  readonly #onDrag = (event: DragEvent): void => {
    if (!event.dataTransfer?.types.includes('Files')) return;
    event.preventDefault();
    const isOver = event.type === 'dragover';
    // It is told many times a second while a file hangs there.
    if (isOver !== this.#isDraggedOver) this.#host.requestUpdate();
    this.#isDraggedOver = isOver;
    const file = event.type === 'drop' ? event.dataTransfer.files[0] : undefined;
    if (file !== undefined) void this.#import.openFile(file);
  };

  readonly #actions = {
    readIn: (units: UnitSystem) => this.#import.readIn(units),
    readAs: (choice: FormChoice) => this.#import.readAs(choice),
    apply: () => {
      if (this.#import.apply()) this.#focus();
    },
    cancel: () => {
      this.#import.cancel();
      this.#focus();
    },
    undo: () => {
      this.#plan.step('undo');
      this.#focus();
    },
  };

  render(): TemplateResult {
    const { view } = this.#plan;
    return html`<h2 part="title">${this.#say.title}</h2>
      <div class="parts">
        ${this.#planPart(view)}
        ${isReady(view) ? html`${this.#outPart(view)} ${this.#paperPart()}` : waitingTemplate(view)}
      </div>
      ${isReady(view) && !view.readOnly ? this.#inPart(view) : nothing}`;
  }

  #planPart(view: PlanView): TemplateResult {
    const { plan, readOnly, faults } = view;
    const open = fileButton({ words: this.#say.open, accept: PLAN_FILES, onFile: (file) => this.#openPlan(file) });
    return html`<section>
      <h3>${this.#say.planTitle}</h3>
      <p>${this.#say.planSays}</p>
      <div class="actions">
        ${readOnly ? nothing : open}
        ${plan === undefined ? nothing : html`<button @click=${() => savePlan(plan)}>${this.#say.save}</button>`}
      </div>
      <div role="alert">${this.#hasOpened ? faultsTemplate('file', faults, readingOf(view), plan !== undefined) : nothing}</div>
      <div role="status">${this.#hasOpened ? migrationTemplate(view.migration, readingOf(view)) : nothing}</div>
    </section>`;
  }

  #outPart({ plan }: ReadyView): TemplateResult {
    const { extents: names } = this.#say;
    const nameOf = (extent: Extent) => (extent === 'volume' ? names.volume[plan.units] : names[extent]);
    const extents = EXTENTS.filter((extent) => extent !== 'shown' || this.#host.sheetView !== undefined);
    const chosen = extents.find((extent) => extent === this.#extent) ?? extents[0] ?? 'all';
    const choose = (event: Event) => {
      this.#extent = (event.target as HTMLSelectElement).value as Extent;
      this.#host.requestUpdate();
    };
    return html`<section>
      <h3>${this.#say.saveTitle}</h3>
      <p>${this.#say.saveSays}</p>
      <div class="actions">
        <label>${this.#say.extent}
          <select @change=${choose}>
            ${extents.map((extent) => html`<option value=${extent} ?selected=${extent === chosen}>${nameOf(extent)}</option>`)}
          </select></label>
        <button @click=${() => this.#saveTable(chosen)}>${this.#say.saveTable}</button>
      </div>
      <div role="alert">${this.#hasFailed ? html`<p class="refused">${this.#say.notFetched}</p>` : nothing}</div>
    </section>`;
  }

  #paperPart(): TemplateResult {
    return html`<section>
      <h3>${this.#say.paperTitle}</h3>
      <p>${this.#say.paperSays}</p>
      <div class="actions"><button @click=${() => globalThis.print()}>${this.#say.print}</button></div>
    </section>`;
  }

  #inPart(view: ReadyView): TemplateResult {
    const { state } = this.#import;
    const status = importStatus(state, view);
    const canUndo = state.step === 'applied' && view.plan === state.after && view.canUndo;
    return html`<section class="in">
      <h3>${this.#say.importTitle}</h3>
      <p>${this.#say.importSays}</p>
      <dl>${this.#layouts(view).map(([kind, layout]) => html`<div><dt>${kind}</dt><dd>${layout}</dd></div>`)}</dl>
      <p class="quiet">${this.#say.layout}</p>
      <div part="drop" class=${this.#isDraggedOver ? 'drop over' : 'drop'} @dragover=${this.#onDrag} @dragleave=${this.#onDrag} @drop=${this.#onDrag}>
        ${fileButton({ words: this.#say.choose, accept: TABLE_FILES, onFile: (file) => void this.#import.openFile(file) })}
        <span class="quiet">${this.#say.drop}</span>
        ${this.#pasteTemplate()}
      </div>
      <div class="status">
        <p role="status">${status}</p>
        ${canUndo ? html`<button class="plain" @click=${this.#actions.undo}>${this.#say.undo}</button>` : nothing}
      </div>
      <div role="alert">${refusedTemplate(state, view)}</div>
      ${previewTemplate(state, view, this.#actions)}
    </section>`;
  }

  #layouts({ plan }: ReadyView): readonly (readonly [kind: string, layout: string])[] {
    const { kinds, layouts } = this.#say;
    return [
      [kinds.minutes, layouts.minutes(plan.season.firstDay)],
      [kinds.rain, layouts.rain],
      [kinds.weather, layouts.weather],
    ];
  }

  #pasteTemplate(): TemplateResult {
    return html`<details>
      <summary>${this.#say.pasteInstead}</summary>
      <label>${this.#say.pasted}
        <textarea rows="5" data-runnel-waits spellcheck="false" autocomplete="off"></textarea></label>
      <button @click=${() => void this.#import.openText(this.#pasted())}>${this.#say.read}</button>
    </details>`;
  }
}

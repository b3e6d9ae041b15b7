import { html, nothing, type TemplateResult } from 'lit';
import type { UnitSystem } from '../../engine/units.ts';
import type { FormChoice } from '../../exchange/csv/table-form.ts';
import { filesWords } from '../../language/en/files.ts';
import type { PlanView } from '../../store/plan-view.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { DropField } from '../shared/drop-field.ts';
import { RunnelOpenEvent } from '../shared/events/open-event.ts';
import { faultsTemplate } from '../shared/faults-template.ts';
import { fileButton } from '../shared/file-button.ts';
import { inSlices } from '../shared/in-slices.ts';
import { migrationTemplate } from '../shared/migration-template.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, type ReadyView, readingOf, waitingTemplate } from '../shared/plan-state.ts';
import { fileNameOf, saveFile } from '../shared/save-file.ts';
import { PLAN_FILES, savePlan } from '../shared/save-plan.ts';
import { CalendarForm } from './calendar-form.ts';
import type { FilesHost } from './files-host.ts';
import { importStatus, previewTemplate, refusedTemplate } from './import-template.ts';
import { printPaper } from './print-paper.ts';
import { filesStyles } from './runnel-files.styles.ts';
import { SeasonEnd } from './season-end.ts';
import { csvChoice, EXTENTS, type Extent } from './season-file.ts';
import { loadCsvWork, TableImport } from './table-import.ts';
import { WORKBOOK_TYPE, WorkbookForm } from './workbook-form.ts';

/** What a table's file is told by. */
const TABLE_FILES = `.csv,.tsv,.txt,.xlsx,text/csv,text/plain,${WORKBOOK_TYPE}`;

/** The plan as a file, the season as a table, import of tables, and paper. */
export class FilesBody {
  readonly #host: FilesHost;
  readonly #plan: PlanConsumer;
  readonly #import: TableImport;
  readonly #drop: DropField;
  readonly #calendar: CalendarForm;
  readonly #workbook: WorkbookForm;
  readonly #end: SeasonEnd;
  #extent: Extent | undefined;
  /** Whether a plan file was chosen here, so that its faults belong here. */
  #hasOpened = false;
  #hasFailed = false;

  constructor(host: FilesHost, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    adoptStyles(host.renderRoot, filesStyles);
    this.#calendar = new CalendarForm(host, plan);
    this.#workbook = new WorkbookForm(host, plan);
    this.#end = new SeasonEnd(host);
    this.#import = new TableImport(host, plan);
    this.#drop = new DropField(host, (file) => void this.#import.openFile(file));
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
    const { plan, season } = view;
    inSlices({
      steps: work.seasonCsvSteps(season, csvChoice(extent, view, this.#host)),
      isWanted: () => this.#host.isConnected,
      // The mark tells spreadsheets that names are in UTF-8.
      onEnd: (text) => saveFile(this.#say.seasonFile(fileNameOf(plan.name)), `\uFEFF${text}`, 'text/csv;charset=utf-8'),
    });
  }

  readonly #actions = {
    readIn: (units: UnitSystem) => this.#import.readIn(units),
    readAs: (choice: FormChoice) => this.#import.readAs(choice),
    apply: () => {
      this.#import.apply(() => this.#focus());
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
        ${
          isReady(view)
            ? html`${this.#paperPart(view)} ${this.#calendar.render(view)}
              <div class="stack">${this.#workbook.render()} ${this.#outPart(view)}</div>`
            : waitingTemplate(view)
        }
      </div>
      ${isReady(view) && !view.readOnly ? this.#inPart(view) : nothing}
      ${isReady(view) ? this.#end.render(view) : nothing}`;
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
    return html`<section class="season">
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

  #paperPart(view: ReadyView): TemplateResult {
    const print = () => void printPaper(this.#host, view, 'season');
    return html`<section>
      <h3>${this.#say.paperTitle}</h3>
      <p>${this.#say.paperSays}</p>
      <div class="actions"><button name="print" @click=${print}>${this.#say.print}</button></div>
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
      ${this.#drop.render(html`
        ${fileButton({ words: this.#say.choose, accept: TABLE_FILES, onFile: (file) => void this.#import.openFile(file) })}
        <span class="quiet">${this.#say.drop}</span>
        ${this.#pasteTemplate()}
      `)}
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

import { consume } from '@lit/context';
import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { property, query, state } from 'lit/decorators.js';
import { gridWords } from '../../language/en/grid.ts';
import type { Language } from '../../language/language.ts';
import { languageFor } from '../../language/languages.ts';
import { SeasonSheet } from '../../sheet/season-sheet.ts';
import type { Measure } from '../../sheet/sheet-view.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { RunnelHoverEvent } from '../shared/events/hover-event.ts';
import { RunnelWhyEvent } from '../shared/events/why-event.ts';
import { lightRoot } from '../shared/light-root.ts';
import { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, type ReadyView, waitingTemplate } from '../shared/plan-state.ts';
import { pointedWeekContext } from '../shared/pointed-week-context.ts';
import { todayOf } from '../shared/today-here.ts';
import { warnDeveloper } from '../shared/warn-developer.ts';
import { GridController, type GridParts } from './grid-controller.ts';
import { keyTemplate } from './grid-key.ts';
import { licenceTemplate } from './licence-template.ts';
import { printTemplate } from './print-template.ts';
import { gridStyles } from './runnel-grid.styles.ts';
import { toolsTemplate } from './tools-template.ts';
import { ViewAnnouncer } from './view-announcer.ts';

/**
 * @summary The season as a spreadsheet: zones against weeks, with gallons, minutes and rain counted in every cell.
 *
 * Stands inside a `runnel-plan`, in the page's own document: inside a shadow root the spreadsheet does not work, and the element says
 * so. Words that stand in it, for pages without scripts, go when it starts. Minutes
 * are typed into a zone's week, rain and reference ET into the rows on top, open days into a planting with a shut-off.
 * Its accessibility has one known fault: Handsontable's root has the role treegrid and holds, beside its rows, the layer
 * that scrolls and the field in which is typed, which that role does not allow (axe: aria-required-children).
 *
 * @fires {RunnelEditEvent} runnel-edit - A figure was entered, taken back, pasted or dragged.
 * @fires {RunnelSelectEvent} runnel-select - A cell was selected.
 * @fires {RunnelHistoryEvent} runnel-history - The keys for undo or redo were pressed.
 * @fires {RunnelHoverEvent} runnel-hover - Another week is under the pointer, or none.
 * @fires {RunnelWhyEvent} runnel-why - It was asked why a figure is so; `selection` is where.
 * @fires {RunnelViewEvent} runnel-view - The sheet shows other figures, rows or weeks; `view` is which.
 *
 * @cssprop [--runnel-grid-height=75vh] - Greatest height of the sheet, where the element itself is given none.
 * @cssprop --runnel-paper - Ground.
 * @cssprop --runnel-ink - Text.
 * @cssprop --runnel-quiet - Lesser text.
 * @cssprop --runnel-line - Rules.
 * @cssprop --runnel-water - Depth of water, controls.
 * @cssprop --runnel-rain - Rain and notes.
 * @cssprop --runnel-growth - Reference ET, this week.
 * @cssprop --runnel-short - Dry and short weeks.
 * @cssprop [--runnel-font=system-ui, sans-serif] - Face of the text.
 * @cssprop [--runnel-font-size=0.9375rem] - Size of the text.
 */
export class RunnelGrid extends LitElement {
  readonly #plan = new PlanConsumer(this);
  readonly #grid = new GridController(this, () => this.#parts());
  #sheet: SeasonSheet | undefined;

  constructor() {
    super();
    new ViewAnnouncer(this, () => (this.#parts() === undefined ? undefined : this.#sheet?.view));
  }

  @state() private isPrinted = false;
  @query('.runnel-grid__box') private readonly box!: HTMLElement | null;

  /** Key of the spreadsheet component Handsontable; `non-commercial-and-evaluation` where its terms of that use are met. */
  @property({ attribute: 'license-key' }) licenseKey = '';

  /** Which figures a cell shows: `all`, `volume`, `minutes` or `rain`. */
  @property({ reflect: true }) measure: Measure = 'all';

  /** The day that counts as today, year-month-day; the reader's own unless set. */
  @property() today: string | undefined;

  /** Week of the season that any view of the plan points at; its header is marked. */
  @consume({ context: pointedWeekContext, subscribe: true })
  @property({ attribute: false })
  pointedWeek: number | undefined;

  protected override createRenderRoot(): HTMLElement {
    return lightRoot(this);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    adoptStyles(this, gridStyles);
    globalThis.addEventListener('beforeprint', this.#toPaper);
    globalThis.addEventListener('afterprint', this.#fromPaper);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    globalThis.removeEventListener('beforeprint', this.#toPaper);
    globalThis.removeEventListener('afterprint', this.#fromPaper);
  }

  // At once: the paper is laid out as soon as this returns.
  readonly #toPaper = (): void => {
    this.isPrinted = true;
    this.performUpdate();
  };

  readonly #fromPaper = (): void => {
    this.isPrinted = false;
  };

  protected override willUpdate(changed: PropertyValues<this>): void {
    const { view } = this.#plan;
    if (!isReady(view)) return;
    this.#keepSheet(view);
    if (changed.has('measure')) this.#sheet?.show({ measure: this.measure });
  }

  /** One sheet for as long as the element lives, so that folds and choices outlast a new file. */
  #keepSheet({ plan, season, documentId, locale, readOnly }: ReadyView): void {
    const state = { plan, season, documentId, locale, readOnly, today: todayOf(this.today) };
    if (this.#sheet === undefined) {
      this.#sheet = new SeasonSheet(state);
      this.#sheet.subscribe(() => this.requestUpdate());
      return;
    }
    const { state: before, reader } = this.#sheet;
    const keys = Object.keys(state) as (keyof typeof state)[];
    // A language that was fetched meanwhile speaks for the same locale.
    const isOtherLanguage = reader.language !== languageFor(locale);
    if (isOtherLanguage || keys.some((key) => before[key] !== state[key])) this.#sheet.update(state);
  }

  /** What the grid is made from; undefined while there is nothing to show or no key. */
  #parts(): GridParts | undefined {
    const { view } = this.#plan;
    const { box } = this;
    if (!this.isConnected || box === null || this.#sheet === undefined || !isReady(view) || this.licenseKey === '') {
      return undefined;
    }
    return {
      box,
      licenseKey: this.licenseKey,
      selection: view.selection,
      setting: {
        sheet: this.#sheet,
        onEdit: (edit) => this.#plan.edit(edit),
        onSelect: (reference) => this.#plan.select(reference),
        onHistory: (step) => this.#plan.step(step),
        onHover: (week) => this.dispatchEvent(new RunnelHoverEvent(week)),
        onWhy: (reference) => this.dispatchEvent(new RunnelWhyEvent(reference)),
      },
    };
  }

  protected override async getUpdateComplete(): Promise<boolean> {
    const isComplete = await super.getUpdateComplete();
    return (await this.#grid.isSettled()) && isComplete;
  }

  protected override updated(): void {
    this.#grid.grid?.season.point(this.pointedWeek);
  }

  protected override render(): unknown {
    const { view } = this.#plan;
    if (this.getRootNode() instanceof ShadowRoot) return this.#inShadow();
    if (!isReady(view) || this.#sheet === undefined) return waitingTemplate(view);
    if (this.licenseKey === '') {
      warnDeveloper(this, 'the license-key of <runnel-grid> is missing; the README says which one to set.');
      return licenceTemplate(this.#sheet.reader.language);
    }
    return this.#season(this.#sheet);
  }

  #inShadow(): TemplateResult {
    warnDeveloper(this, '<runnel-grid> stands in a shadow root; it has to stand in the page itself.');
    const { locale } = this.#plan.view;
    return html`<p class="runnel-grid__waiting" role="status">${gridWords(languageFor(locale)).inShadow}</p>`;
  }

  #season(sheet: SeasonSheet): TemplateResult {
    const words = gridWords(sheet.reader.language);
    const isEmpty = sheet.rows.every(({ kind }) => kind !== 'zone');
    return html`${toolsTemplate(sheet, this.#grid.grid, (measure) => {
      this.measure = measure;
    })}
      <div class="runnel-grid__box"></div>
      ${this.#grid.grid === undefined ? this.#waiting(sheet.reader.language) : nothing}
      ${isEmpty ? html`<p class="runnel-grid__waiting" role="status">${words.noMatch}</p>` : nothing}
      ${keyTemplate(sheet)}
      ${this.isPrinted ? printTemplate(sheet) : nothing}`;
  }

  #waiting(language: Language): TemplateResult {
    const { failed, loading } = gridWords(language);
    return html`<p class="runnel-grid__waiting" role="status">${this.#grid.hasFailed ? failed : loading}</p>`;
  }
}

export type { RunnelEventMap } from '../shared/events/runnel-events.ts';

declare global {
  interface HTMLElementTagNameMap {
    'runnel-grid': RunnelGrid;
  }
}

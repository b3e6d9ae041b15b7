import { consume } from '@lit/context';
import { html, nothing, type PropertyValues, render as renderInto, type TemplateResult } from 'lit';
import { property, query, state } from 'lit/decorators.js';
import { gridWords } from '../../language/en/grid.ts';
import type { Language } from '../../language/language.ts';
import { languageFor } from '../../language/languages.ts';
import type { SeasonSheet } from '../../sheet/season-sheet.ts';
import type { Measure } from '../../sheet/sheet-view.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { type Frame, RunnelFrameEvent } from '../shared/events/frame-event.ts';
import { RunnelHoverEvent } from '../shared/events/hover-event.ts';
import { RunnelWhyEvent } from '../shared/events/why-event.ts';
import { frameContext } from '../shared/frame-context.ts';
import { LatePart } from '../shared/late-part.ts';
import { lightRoot } from '../shared/light-root.ts';
import { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, type ReadyView, waitingTemplate } from '../shared/plan-state.ts';
import { pointedWeekContext } from '../shared/pointed-week-context.ts';
import { todayOf } from '../shared/today-here.ts';
import { ViewElement } from '../shared/view-element.ts';
import { warnDeveloper } from '../shared/warn-developer.ts';
import { GridController, type GridParts } from './grid-controller.ts';
import { licenceTemplate } from './licence-template.ts';
import { gridStyles } from './runnel-grid.styles.ts';
import { ViewAnnouncer } from './view-announcer.ts';

/** Elements of the page in which a sheet's controls and key stand. */
export interface GridPlaces {
  readonly tools: HTMLElement;
  readonly key: HTMLElement;
}

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
 * @fires {RunnelFrameEvent} runnel-frame - Other weeks or zones have come into view; `frame` is which.
 * @fires {RunnelViewEvent} runnel-view - The sheet shows other figures, rows or weeks; `view` is which.
 *
 * @cssprop [--runnel-grid-height=75vh] - Greatest height of the sheet, where the element itself is given none.
 * @cssprop --runnel-paper - Ground.
 * @cssprop --runnel-ink - Text.
 * @cssprop --runnel-quiet - Lesser text.
 * @cssprop --runnel-line - Rules.
 * @cssprop --runnel-water - Depth of water.
 * @cssprop --runnel-rain - Rain and notes.
 * @cssprop --runnel-growth - Reference ET, this week.
 * @cssprop --runnel-short - Dry and short weeks.
 * @cssprop [--runnel-font=system-ui, sans-serif] - Face of the text.
 * @cssprop [--runnel-font-size=0.9375rem] - Size of the text.
 */
export class RunnelGrid extends ViewElement {
  readonly #plan = new PlanConsumer(this);
  readonly #grid = new GridController(this, () => this.#parts());
  readonly #sheetPart = new LatePart(this, this.#plan, () => {
    if (this.licenseKey !== '') this.#grid.fetchAhead();
    return import('../../sheet/season-sheet.ts');
  });
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

  /** The weeks and zones that the sheet shows, or that another view of the plan asks it to show. */
  @consume({ context: frameContext, subscribe: true })
  @property({ attribute: false })
  frame: Frame | undefined;

  /** The last one that was wanted from elsewhere and brought into view. */
  #wanted: Frame | undefined;

  /** Where the controls above the sheet are to stand instead, and its key: elements of the page, anywhere in it. */
  @property({ attribute: false }) places: GridPlaces | undefined;

  /**
   * Whether it waits: what stands above it has not got its size yet, and would move its cells away under a press.
   *
   * @internal
   */
  @property({ attribute: false }) isHeld = false;

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
      const { part } = this.#sheetPart;
      if (part === undefined) return;
      this.#sheet = new part.SeasonSheet(state);
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
    if (
      !this.isConnected ||
      this.isHeld ||
      box === null ||
      this.#sheet === undefined ||
      !isReady(view) ||
      this.licenseKey === ''
    ) {
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
        onShown: (shown) => {
          if (!this.#isFrameAwaited) this.dispatchEvent(new RunnelFrameEvent({ ...shown, from: this }));
        },
      },
    };
  }

  /** Whether somebody wants another part than this shows by now: to tell of this one would take that wish back. */
  get #isFrameAwaited(): boolean {
    return this.isUpdatePending && this.frame !== undefined && this.frame.from !== this && this.frame !== this.#wanted;
  }

  protected override async getUpdateComplete(): Promise<boolean> {
    const isComplete = await super.getUpdateComplete();
    return (await this.#sheetPart.isSettled()) && (await this.#grid.isSettled()) && isComplete;
  }

  /**
   * Of any garden it draws only what is in view. What was typed is drawn with its key: a turn later the browser would paint a frame
   * without it first.
   *
   * @internal
   */
  protected override get isDrawnAtOnce(): boolean {
    return this.#plan.isDoneAtOnce;
  }

  /** @internal */
  override fail(error: unknown): void {
    super.fail(error);
    this.#grid.drop();
  }

  protected override updated(changed: PropertyValues<this>): void {
    const { grid } = this.#grid;
    grid?.season.point(this.pointedWeek);
    const { frame } = this;
    if (!changed.has('frame') || grid === undefined || frame === undefined || frame.from === this) return;
    this.#wanted = frame;
    const shown = changed.get('frame');
    if (shown?.week !== frame.week) grid.showWeek(frame.week);
    const [first] = frame.zones;
    const row = this.#sheet?.rows.findIndex((each) => each.kind === 'zone' && each.zone.zone.id === first) ?? -1;
    if (row >= 0 && shown?.zones[0] !== first) grid.showRow(row);
    if (frame.enters === true) grid.enter(frame.week);
  }

  protected override render(): unknown {
    const { view } = this.#plan;
    if (this.getRootNode() instanceof ShadowRoot) return this.#inShadow();
    if (!isReady(view)) return waitingTemplate(view);
    if (this.licenseKey === '') {
      warnDeveloper(this, 'the license-key of <runnel-grid> is missing; the README says which one to set.');
      return licenceTemplate(languageFor(view.locale));
    }
    if (this.#sheet === undefined) {
      return html`<p class="runnel-grid__waiting" role="status">${this.#sheetPart.waitingWords}</p>`;
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
    const { around, grid } = this.#grid;
    if (around !== undefined) for (const styles of around.aroundStyles) adoptStyles(this, styles);
    const tools = around?.toolsTemplate(sheet, grid, {
      isBeside: this.places !== undefined,
      onMeasure: (measure) => {
        this.measure = measure;
      },
      onWeek: (week) => {
        const { selection } = this.#plan.view;
        if (selection.week !== undefined) this.#plan.select({ ...selection, week });
      },
    });
    const key = around?.keyTemplate(sheet);
    if (this.places !== undefined) {
      renderInto(tools, this.places.tools);
      renderInto(key, this.places.key);
    }
    return html`${this.places === undefined ? tools : nothing}
      <div class="runnel-grid__room"><div class="runnel-grid__box"></div></div>
      ${around === undefined ? this.#waiting(sheet.reader.language) : nothing}
      ${isEmpty ? html`<p class="runnel-grid__waiting" role="status">${words.noMatch}</p>` : nothing}
      ${this.places === undefined ? key : nothing}
      ${this.isPrinted ? around?.printTemplate(sheet) : nothing}`;
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

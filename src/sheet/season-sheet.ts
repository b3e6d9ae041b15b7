/**
 * A season as a sheet: rows, columns, what each cell shows and what becomes of an entry. Knows no grid and no page, so
 * that a test, a runnel-grid and a host's own grid share it.
 */
import { dayNumber, type IsoDate, isoDate } from '../engine/calendar.ts';
import type { Season } from '../engine/season/season.ts';
import { sheetWords } from '../language/en/sheet.ts';
import { type Format, formatFor } from '../language/format/format.ts';
import { type WeekCalendar, weekCalendar } from '../language/format/week-calendar.ts';
import { languageFor } from '../language/languages.ts';
import { type Reader, readerFor } from '../language/reader.ts';
import type { BatchAction } from '../plan/edits/edit.ts';
import type { Plan } from '../plan/schema/plan-schema.ts';
import type { CellContext } from './cells/cell-context.ts';
import { cellName, entryLabel } from './cells/cell-name.ts';
import type { CellView } from './cells/cell-view.ts';
import { CellViewCache } from './cells/cell-view-cache.ts';
import { describeCell } from './cells/describe-cell.ts';
import { entryHint } from './cells/entry-hint.ts';
import { cellValue, copyText, entryText, type TextContext, typedText } from './entry/cell-text.ts';
import type { Entry, EntryContext } from './entry/entry.ts';
import { type Block, type BlockEntry, readBlock } from './entry/read-block.ts';
import { readEntry, whyFixed } from './entry/read-entry.ts';
import { findRow, rowReference } from './reference.ts';
import type { SheetCell } from './sheet-cell.ts';
import { rowKey, type SheetRow, seasonRows } from './sheet-row.ts';
import { type Measure, PLAIN_VIEW, type SheetView } from './sheet-view.ts';

export interface SheetState {
  readonly plan: Plan;
  readonly season: Season;
  /** Another value for another plan: what is being typed then is not entered into it. An edit of the plan keeps it. */
  readonly documentId?: number | undefined;
  /** BCP 47 tag of the reader. Where no language was registered for it, the sheet is in English, numbers and dates too. */
  readonly locale: string;
  readonly readOnly: boolean;
  /** The day on which “this week” lies; left out, no week is. */
  readonly today?: IsoDate | undefined;
}

export class SeasonSheet {
  #state: SheetState;
  #view: SheetView = PLAIN_VIEW;
  #rows: SheetRow[];
  #context: CellContext;
  #views: CellViewCache;
  readonly #watchers = new Set<() => void>();

  constructor(state: SheetState) {
    this.#state = state;
    this.#context = contextOf(state, this.#view.measure);
    this.#views = new CellViewCache(this.#context);
    this.#rows = [...seasonRows(state.season, this.#view, this.reader.locale)];
  }

  get state(): SheetState {
    return this.#state;
  }

  get view(): SheetView {
    return this.#view;
  }

  /** The same array until rows come, go or move; its members are replaced in place as the season changes. */
  get rows(): readonly SheetRow[] {
    return this.#rows;
  }

  get weeks(): number {
    return this.#state.season.garden.span.weeks;
  }

  /** Who the sheet is written for. */
  get reader(): Reader {
    return this.#context.format.reader;
  }

  get format(): Format {
    return this.#context.format;
  }

  get calendar(): WeekCalendar {
    return this.#context.calendar;
  }

  /** Week of the season that `today` lies in. */
  get thisWeek(): number | undefined {
    return this.#context.thisWeek;
  }

  /** Calls `watcher` after every change of state or view, until the returned function is called. */
  subscribe(watcher: () => void): () => void {
    this.#watchers.add(watcher);
    return () => this.#watchers.delete(watcher);
  }

  update(state: SheetState): void {
    const { firstDay, weeks } = this.#state.season.garden.span;
    const { language, units } = this.reader;
    const { thisWeek } = this;
    this.#state = state;
    const { span } = state.season.garden;
    const isRewritten =
      language !== languageFor(state.locale) ||
      units !== state.plan.units ||
      thisWeek !== weekOf(state) ||
      firstDay !== span.firstDay ||
      weeks !== span.weeks;
    if (isRewritten) this.#rewrite();
    this.#changed();
  }

  show(change: Partial<SheetView>): void {
    const before = this.#view;
    this.#view = { ...before, ...change };
    if (before.measure !== this.#view.measure) this.#rewrite();
    this.#changed();
  }

  hideWeeks(weeks: readonly number[]): void {
    this.show({ hiddenWeeks: new Set([...this.#view.hiddenWeeks, ...weeks]) });
  }

  hideZones(ids: readonly string[]): void {
    this.show({ hiddenZones: new Set([...this.#view.hiddenZones, ...ids]) });
  }

  /** How many of the season's weeks and zones are hidden. */
  get hidden(): { readonly weeks: number; readonly zones: number } {
    const { hiddenWeeks, hiddenZones } = this.#view;
    return {
      weeks: [...hiddenWeeks].filter((week) => week < this.weeks).length,
      zones: this.#state.season.zones.filter(({ zone }) => hiddenZones.has(zone.id)).length,
    };
  }

  get hidesSomething(): boolean {
    const { weeks, zones } = this.hidden;
    return weeks + zones > 0;
  }

  showAll(): void {
    this.show({ hiddenWeeks: new Set(), hiddenZones: new Set() });
  }

  setOpen(zoneId: string, isOpen: boolean): void {
    const open = new Set(this.#view.open);
    if (isOpen) open.add(zoneId);
    else open.delete(zoneId);
    this.show({ open });
  }

  setAllOpen(isOpen: boolean): void {
    const zones = this.#state.season.zones.map(({ zone }) => zone.id);
    this.show({ open: new Set(isOpen ? zones : []) });
  }

  /** The same cell in the season as it is now; undefined where its zone or planting is gone. */
  now({ row, column }: SheetCell): SheetCell | undefined {
    const found = findRow(this.#state.season, rowReference(row));
    return found && { row: found, column };
  }

  /** What a cell shows. */
  cellView(cell: SheetCell): CellView {
    return this.#views.view(this.#state.season, cell.row, cell.column);
  }

  /** All that a cell shows, in words. */
  describe(cell: SheetCell): string {
    return describeCell(this.#state.season, cell, this.#context);
  }

  /** `Beds, week of July 5`. */
  nameOf(cell: SheetCell): string {
    return cellName(cell, this.#context);
  }

  /** What the editor of a cell is for: `Minutes of the week: Beds, week of July 5`. */
  entryLabel(cell: SheetCell): string {
    return entryLabel(cell, this.#context);
  }

  /** What would become of a text that is being typed into a cell. */
  entryHint(cell: SheetCell, text: string): string {
    return entryHint(cell, this.read(cell, text), this.#context);
  }

  read(cell: SheetCell, text: string): Entry {
    return readEntry(cell, text, this.#entryContext());
  }

  readBlock(entries: readonly BlockEntry[], action: BatchAction): Block {
    return readBlock(entries, action, this.#entryContext());
  }

  /** Why nothing can be entered in a cell; undefined where something can. */
  whyFixed(cell: SheetCell): string | undefined {
    return whyFixed(cell, this.#entryContext())?.why;
  }

  entryText(cell: SheetCell): string {
    return entryText(cell, this.#textContext(this.#view.measure));
  }

  /** As one would type it to enter the same elsewhere, with its unit. */
  typedText(cell: SheetCell): string {
    return typedText(cell, this.#textContext(this.#view.measure));
  }

  /** A name, or a figure in the plan's unit. */
  value(cell: SheetCell): string | number {
    return cellValue(cell, this.#textContext(this.#view.measure));
  }

  copyText(cell: SheetCell, measure: Measure = this.#view.measure): string {
    return copyText(cell, this.#textContext(measure));
  }

  /** The ISO day by which edits name a week. */
  weekDay(week: number): IsoDate {
    return isoDate(this.#state.season.garden.span.firstDay + 7 * week);
  }

  #changed(): void {
    this.#setRows();
    for (const watcher of this.#watchers) watcher();
  }

  #setRows(): void {
    const next = seasonRows(this.#state.season, this.#view, this.reader.locale);
    const isSame = next.length === this.#rows.length && next.every((row, at) => rowKey(row) === this.#keyAt(at));
    if (isSame) this.#rows.splice(0, next.length, ...next);
    else this.#rows = [...next];
  }

  #keyAt(at: number): string {
    return rowKey(this.#rows[at] as SheetRow);
  }

  #rewrite(): void {
    this.#context = contextOf(this.#state, this.#view.measure);
    this.#views = new CellViewCache(this.#context);
  }

  #entryContext(): EntryContext {
    const { plan, season, readOnly, today } = this.#state;
    return { plan, season, readOnly, today: today === undefined ? undefined : dayNumber(today), ...this.#context };
  }

  #textContext(measure: Measure): TextContext {
    return { season: this.#state.season, ...this.#context, measure };
  }
}

function weekOf({ today, season }: SheetState): number | undefined {
  if (today === undefined) return undefined;
  const { firstDay, weeks } = season.garden.span;
  const week = Math.floor((dayNumber(today) - firstDay) / 7);
  return week >= 0 && week < weeks ? week : undefined;
}

function contextOf(state: SheetState, measure: Measure): CellContext {
  const { plan, season, locale } = state;
  const reader = readerFor(locale, plan.units);
  return {
    measure,
    format: formatFor(reader),
    calendar: weekCalendar(season.garden.span, reader),
    words: sheetWords(reader.language),
    thisWeek: weekOf(state),
  };
}

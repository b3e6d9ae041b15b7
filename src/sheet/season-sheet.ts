/**
 * A season as a sheet: rows, columns, what each cell shows and what becomes of an entry. Knows no grid and no page, so
 * that a test, a runnel-grid and a host's own grid share it.
 */
import { dayNumber, type IsoDate, isoDate } from '../engine/calendar.ts';
import type { Season } from '../engine/season/season.ts';
import type { BatchAction } from '../plan/edits/edit.ts';
import type { Plan } from '../plan/schema/plan-schema.ts';
import { cellName, entryKind } from './cell-name.ts';
import { cellValue, copyText, entryText, typedText } from './entry/cell-text.ts';
import type { Entry, EntryContext } from './entry/entry.ts';
import { type Block, type BlockEntry, readBlock } from './entry/read-block.ts';
import { readEntry, whyFixed } from './entry/read-entry.ts';
import type { CellFace } from './faces/cell-face.ts';
import type { Reading } from './faces/reading.ts';
import { SheetFaces } from './faces/sheet-faces.ts';
import { placeOfRow, rowAt } from './row-place.ts';
import { cellSentence } from './sentences/cell-sentence.ts';
import type { SheetCell } from './sheet-cell.ts';
import { type SheetFormat, sheetFormat } from './sheet-format.ts';
import { rowKey, type SheetRow, seasonRows } from './sheet-row.ts';
import { type Measure, PLAIN_VIEW, type SheetView } from './sheet-view.ts';
import { type WeekCalendar, weekCalendar } from './week-calendar.ts';

export interface SheetState {
  readonly plan: Plan;
  readonly season: Season;
  /** Another value for another plan: what is being typed then is not entered into it. An edit of the plan keeps it. */
  readonly documentId?: number | undefined;
  /** BCP 47 tag for numbers and dates. */
  readonly locale: string;
  readonly readOnly: boolean;
  /** The day on which “this week” lies; left out, no week is. */
  readonly today?: IsoDate | undefined;
}

export class SeasonSheet {
  #state: SheetState;
  #view: SheetView = PLAIN_VIEW;
  #rows: SheetRow[];
  #format: SheetFormat;
  #calendar: WeekCalendar;
  #faces: SheetFaces;
  readonly #watchers = new Set<() => void>();

  constructor(state: SheetState) {
    this.#state = state;
    this.#rows = [...seasonRows(state.season, this.#view, state.locale)];
    this.#format = sheetFormat(state.plan.units, state.locale);
    this.#calendar = weekCalendar(state.season.garden.span, state.locale);
    this.#faces = this.#newFaces();
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

  get format(): SheetFormat {
    return this.#format;
  }

  get calendar(): WeekCalendar {
    return this.#calendar;
  }

  /** Week of the season that `today` lies in. */
  get thisWeek(): number | undefined {
    const { today, season } = this.#state;
    if (today === undefined) return undefined;
    const week = Math.floor((dayNumber(today) - season.garden.span.firstDay) / 7);
    return week >= 0 && week < this.weeks ? week : undefined;
  }

  /** Calls `watcher` after every change of state or view, until the returned function is called. */
  subscribe(watcher: () => void): () => void {
    this.#watchers.add(watcher);
    return () => this.#watchers.delete(watcher);
  }

  update(state: SheetState): void {
    const before = this.#state;
    this.#state = state;
    const { firstDay, weeks } = before.season.garden.span;
    const span = state.season.garden.span;
    const isRewritten =
      before.locale !== state.locale ||
      before.plan.units !== state.plan.units ||
      firstDay !== span.firstDay ||
      weeks !== span.weeks;
    if (isRewritten) {
      this.#format = sheetFormat(state.plan.units, state.locale);
      this.#calendar = weekCalendar(span, state.locale);
      this.#faces = this.#newFaces();
    }
    this.#changed();
  }

  show(change: Partial<SheetView>): void {
    const before = this.#view;
    this.#view = { ...before, ...change };
    if (before.measure !== this.#view.measure) this.#faces = this.#newFaces();
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
    const found = rowAt(this.#state.season, placeOfRow(row));
    return found && { row: found, column };
  }

  face(cell: SheetCell): CellFace {
    return this.#faces.face(this.#state.season, cell.row, cell.column);
  }

  /** All that a cell shows, in words. */
  describe(cell: SheetCell): string {
    return cellSentence(this.#state.season, cell, this.#reading);
  }

  /** `Beds, week of July 5`. */
  nameOf(cell: SheetCell): string {
    return cellName(cell, this.#calendar);
  }

  /** What the editor of a cell is for: `Minutes of the week: Beds, week of July 5`. */
  entryLabel(cell: SheetCell): string {
    return `${entryKind(cell.row, this.#view.measure)}: ${this.nameOf(cell)}`;
  }

  read(cell: SheetCell, text: string): Entry {
    return readEntry(cell, text, this.#entryContext());
  }

  readBlock(entries: readonly BlockEntry[], action: BatchAction): Block {
    return readBlock(entries, action, this.#entryContext());
  }

  /** Why nothing can be entered in a cell; undefined where something can. */
  whyFixed(cell: SheetCell): string | undefined {
    return whyFixed(cell, this.#entryContext());
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
    const next = seasonRows(this.#state.season, this.#view, this.#state.locale);
    const isSame = next.length === this.#rows.length && next.every((row, at) => rowKey(row) === this.#keyAt(at));
    if (isSame) this.#rows.splice(0, next.length, ...next);
    else this.#rows = [...next];
  }

  #keyAt(at: number): string {
    return rowKey(this.#rows[at] as SheetRow);
  }

  #newFaces(): SheetFaces {
    return new SheetFaces(this.#reading);
  }

  get #reading(): Reading {
    return { measure: this.#view.measure, format: this.#format, calendar: this.#calendar };
  }

  #entryContext(): EntryContext {
    const { plan, season, locale, readOnly } = this.#state;
    return { plan, season, locale, readOnly, measure: this.#view.measure, format: this.#format };
  }

  #textContext(measure: Measure) {
    const { plan, season, locale } = this.#state;
    return { season, units: plan.units, locale, measure };
  }
}

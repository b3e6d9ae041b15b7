/** Week headers say which days they stand for, and mark this week and the week under the pointer. */
import type { Events } from 'handsontable/base';
import { sheetWords } from '../../language/en/sheet.ts';
import type { SeasonSheet } from '../season-sheet.ts';
import type { SheetColumn } from '../sheet-cell.ts';
import type { SeasonBinding } from './season-binding.ts';
import { cellUnits } from './season-columns.ts';

const THIS_WEEK = 'runnel-this-week';
const POINTED = 'runnel-pointed';
/** The month that this week lies in, and where this week is the first of it that is drawn. */
const MONTH_OF_NOW = 'runnel-month-of-now';
const FROM_NOW = 'runnel-from-now';
/** Over names and totals, which stand before the weeks. */
const LEAD = 'runnel-lead';

export class WeekHeaders {
  readonly #binding: SeasonBinding;
  #pointed: number | undefined;
  readonly #weekOf = new WeakMap<Element, number>();

  constructor(binding: SeasonBinding) {
    this.#binding = binding;
    const { hot, setting } = binding;
    const onLeave = () => setting.onHover?.(undefined);
    hot.rootElement.addEventListener('mouseleave', onLeave);
    binding.onStop(() => hot.rootElement.removeEventListener('mouseleave', onLeave));
  }

  get hooks(): Partial<Events> {
    const { setting } = this.#binding;
    return {
      afterGetColHeader: (column, th, level) => this.#dress(column, th, level),
      afterOnCellMouseOver: (_event, { col }) => {
        const column = col === null || col < 0 ? undefined : this.#binding.column(col);
        setting.onHover?.(column?.kind === 'week' ? column.week : undefined);
      },
    };
  }

  /** Marks the week that any view points at. */
  point(week: number | undefined): void {
    if (this.#pointed === week) return;
    this.#pointed = week;
    // Frozen rows draw every header a second time.
    for (const th of this.#binding.hot.rootElement.querySelectorAll('thead th')) {
      th.classList.toggle(POINTED, week !== undefined && this.#weekOf.get(th) === week);
    }
  }

  /** On a phone the season's figures scroll by, and the names stay. */
  #namesUnits(column: SheetColumn | undefined): boolean {
    const isPhone = this.#binding.hot.getSettings().fixedColumnsStart === 1;
    return column?.kind === 'season' || (column?.kind === 'name' && isPhone);
  }

  #dress(visualColumn: number, th: HTMLTableCellElement, level: number): void {
    th.classList.remove(THIS_WEEK, POINTED);
    const column = visualColumn < 0 ? undefined : this.#binding.column(visualColumn);
    th.classList.toggle(LEAD, column !== undefined && column.kind !== 'week');
    const isLowest = level === this.#binding.hot.view.getColumnHeadersCount() - 1;
    const { sheet } = this.#binding.setting;
    if (isLowest && sheet.view.measure === 'all' && this.#namesUnits(column))
      layUnits(th, sheet, column?.kind === 'name');
    this.#markMonth(th, isLowest ? undefined : column);
    if (column?.kind !== 'week' || !isLowest) {
      th.removeAttribute('title');
      this.#weekOf.delete(th);
      return;
    }
    const { calendar, thisWeek, reader } = sheet;
    const isNow = column.week === thisWeek;
    const week = calendar.weekOf(column.week);
    this.#weekOf.set(th, column.week);
    th.title = isNow ? sheetWords(reader.language).thisWeek(week) : week;
    th.classList.toggle(POINTED, column.week === this.#pointed);
    if (isNow) markNow(th, sheetWords(reader.language).headings.thisWeek);
  }

  /** The month's name makes room for the mark of this week, which rises into it. */
  #markMonth(th: HTMLTableCellElement, column: SheetColumn | undefined): void {
    const { calendar, thisWeek } = this.#binding.setting.sheet;
    const week = column?.kind === 'week' ? column.week : undefined;
    const month = calendar.months.find((each) => week !== undefined && week < each.week + each.weeks);
    const isOfNow =
      week !== undefined &&
      thisWeek !== undefined &&
      month !== undefined &&
      week <= thisWeek &&
      thisWeek < month.week + month.weeks;
    th.classList.toggle(MONTH_OF_NOW, isOfNow && week < thisWeek);
    th.classList.toggle(FROM_NOW, isOfNow && week === thisWeek);
    if (!isOfNow) return;
    const now = this.#binding.visualColumn({ kind: 'week', week: thisWeek });
    if (now !== undefined) th.style.setProperty('--_week', `${this.#binding.hot.getColWidth(now)}px`);
  }
}

/** Its days under its name, which stands in the row of the months. */
function markNow(th: HTMLTableCellElement, name: string): void {
  th.classList.add(THIS_WEEK);
  const mark = th.ownerDocument.createElement('span');
  mark.className = 'runnel-now';
  mark.textContent = name;
  // A space parts it from the days where it is read aloud.
  th.querySelector('.colHeader')?.prepend(mark, ' ');
}

/** The units lie in the heading as the figures do in a cell; beside its own words where it keeps them. */
function layUnits(th: HTMLTableCellElement, sheet: SeasonSheet, keepsWords: boolean): void {
  const place = th.querySelector('.colHeader');
  if (place === null) return;
  const { main, start, end } = cellUnits(sheet);
  const part = (name: string, text: string) => {
    const made = th.ownerDocument.createElement(name);
    made.textContent = text;
    return made;
  };
  const words = keepsWords ? [part('span', sheetWords(sheet.reader.language).headings.zone)] : [];
  place.replaceChildren(...words, part('b', main), part('i', start), ` ${end}`);
}

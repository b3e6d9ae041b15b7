/** Week headers say which days they stand for, and mark this week and the week under the pointer. */
import type { Events } from 'handsontable/base';
import type { SeasonBinding } from './season-binding.ts';

const THIS_WEEK = 'runnel-this-week';
const POINTED = 'runnel-pointed';

export class WeekHeaders {
  readonly #binding: SeasonBinding;
  #pointed: number | undefined;

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
    for (const th of this.#headersOf(this.#pointed)) th.classList.remove(POINTED);
    this.#pointed = week;
    for (const th of this.#headersOf(week)) th.classList.add(POINTED);
  }

  #dress(visualColumn: number, th: HTMLTableCellElement, level: number): void {
    th.classList.remove(THIS_WEEK, POINTED);
    const column = visualColumn < 0 ? undefined : this.#binding.column(visualColumn);
    const isLowest = level === this.#binding.hot.view.getColumnHeadersCount() - 1;
    if (column?.kind !== 'week' || !isLowest) {
      th.removeAttribute('title');
      return;
    }
    const { calendar, thisWeek } = this.#binding.setting.sheet;
    const isNow = column.week === thisWeek;
    const words = `${calendar.words(column.week)}${isNow ? ', this week' : ''}`;
    th.title = words;
    th.setAttribute('aria-label', words);
    th.classList.toggle(THIS_WEEK, isNow);
    th.classList.toggle(POINTED, column.week === this.#pointed);
  }

  #headersOf(week: number | undefined): readonly Element[] {
    const column = week === undefined ? undefined : this.#binding.visualColumn({ kind: 'week', week });
    if (column === undefined) return [];
    const level = this.#binding.hot.view.getColumnHeadersCount();
    const header = this.#binding.hot.getCell(-1, column, true);
    return header === null || level === 0 ? [] : [header];
  }
}

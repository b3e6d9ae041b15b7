/** Which part of the season a grid shows, and that it comes to rest on whole weeks and rows. */
import type Handsontable from 'handsontable/base';
import { sameData } from '../../plan/same-data.ts';
import type { SeasonBinding } from './season-binding.ts';
import type { ShownPart } from './season-setting.ts';

/** What the sheet scrolls by: the width of a week, the height of a row, px. */
export interface ScrollSteps {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Width of what stands before the weeks. */
  readonly leadPx: number;
}

/** So long after the last turn of the wheel the sheet is at rest. */
const REST_MS = 160;
/** Less is rounding. */
const LEAST_PX = 1;

export class InView {
  readonly #hot: Handsontable.Core;
  readonly #binding: SeasonBinding;
  readonly #steps: () => ScrollSteps;
  readonly #holder: HTMLElement | null;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #told: ShownPart | undefined;
  /** Somebody holds the scrollbar, or drags a selection. */
  #isHeld = false;

  constructor(hot: Handsontable.Core, binding: SeasonBinding, steps: () => ScrollSteps) {
    this.#hot = hot;
    this.#binding = binding;
    this.#steps = steps;
    this.#holder = hot.rootElement.querySelector<HTMLElement>('.ht_master .wtHolder');
    this.#holder?.addEventListener('scroll', this.#onScroll, { passive: true });
    hot.rootElement.addEventListener('pointerdown', this.#onHold);
    hot.rootWindow.addEventListener('pointerup', this.#onLetGo);
    // Not with the scroll itself: by then the library does not know yet what is in view.
    const tell = () => this.tell();
    binding.addHooks({ afterRender: tell, afterScrollHorizontally: tell, afterScrollVertically: tell });
  }

  /** Weeks that stood in it whole, once they were looked for. */
  get weeks(): readonly number[] {
    const { week, weeks } = this.#told ?? {};
    return between(week ?? null, week === undefined || weeks === undefined ? null : week + weeks - 1);
  }

  stop(): void {
    clearTimeout(this.#timer);
    this.#holder?.removeEventListener('scroll', this.#onScroll);
    this.#hot.rootElement.removeEventListener('pointerdown', this.#onHold);
    this.#hot.rootWindow.removeEventListener('pointerup', this.#onLetGo);
  }

  /** Tells who wants to know, where it is another part than before. */
  tell(): void {
    const { onShown, sheet } = this.#binding.setting;
    const shown = this.#shown();
    this.#hot.rootElement.classList.toggle('runnel-at-now', shown !== undefined && shown.week === sheet.thisWeek);
    if (shown === undefined || sameData(shown, this.#told)) return;
    this.#told = shown;
    onShown?.(shown);
  }

  #shown(): ShownPart | undefined {
    const hot = this.#hot;
    const weeks = between(hot.getFirstFullyVisibleColumn(), hot.getLastFullyVisibleColumn()).flatMap((at) => {
      const column = this.#binding.column(at);
      return column?.kind === 'week' ? [column.week] : [];
    });
    const zones = between(hot.getFirstFullyVisibleRow(), hot.getLastFullyVisibleRow()).flatMap((at) => {
      const row = this.#binding.row(at);
      return row?.kind === 'zone' || row?.kind === 'planting' ? [row.zone.zone.id] : [];
    });
    const [week] = weeks;
    if (week === undefined) return undefined;
    return { week, weeks: (weeks.at(-1) ?? week) - week + 1, zones: [...new Set(zones)], leadPx: this.#steps().leadPx };
  }

  readonly #onScroll = (): void => {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(this.#settle, REST_MS);
  };

  readonly #onHold = (): void => {
    this.#isHeld = true;
  };

  readonly #onLetGo = (): void => {
    if (!this.#isHeld) return;
    this.#isHeld = false;
    this.#onScroll();
  };

  readonly #settle = (): void => {
    const holder = this.#holder;
    if (holder === null || this.#isHeld || this.#hot.isDestroyed) return;
    this.tell();
    const { widthPx, heightPx } = this.#steps();
    const left = nearest(holder.scrollLeft, widthPx);
    const top = nearest(holder.scrollTop, heightPx);
    if (left === undefined && top === undefined) return;
    holder.scrollTo({ left: left ?? holder.scrollLeft, top: top ?? holder.scrollTop });
  };
}

function between(first: number | null, last: number | null): readonly number[] {
  if (first === null || last === null) return [];
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, at) => first + at);
}

/** The nearest whole step; undefined where it stands there. */
function nearest(px: number, step: number): number | undefined {
  const to = Math.round(px / step) * step;
  return Math.abs(to - px) > LEAST_PX ? to : undefined;
}

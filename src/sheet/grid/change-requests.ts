import { describeFault } from '../../language/describe-fault.ts';
import { sheetActionsWords } from '../../language/en/sheet-actions.ts';
import type { EditResult } from '../../plan/edits/apply-edit.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { HistoryStep } from '../../plan/history/history-key.ts';
import { SEASON_COLUMN, type SheetCell } from '../sheet-cell.ts';
import { TOTAL_ROW } from '../sheet-row.ts';
import type { CellCallout } from './cell-callout.ts';
import type { SeasonSetting } from './season-setting.ts';

/** Asks whoever holds the plan for changes, and announces what came of one once the sheet shows it. */
export class ChangeRequests {
  readonly #setting: SeasonSetting;
  readonly #callout: CellCallout;
  /** Announced once the sheet shows the change that was asked for. */
  #announcement: (() => string) | undefined;

  constructor(setting: SeasonSetting, callout: CellCallout) {
    this.#setting = setting;
    this.#callout = callout;
  }

  /** Asks for a change of `cells`. Lines that say why, where it is refused at once; later they are announced. */
  edit(edit: Edit | undefined, cells: readonly SheetCell[]): readonly string[] | undefined {
    if (edit === undefined) return undefined;
    // Before it is asked for: the sheet may be updated at once.
    this.#announcement = () => this.#changed(cells);
    const answer = this.#setting.onEdit(edit);
    if (!(answer instanceof Promise)) return this.#refusalIn(answer);
    void answer.then((result) => {
      const why = this.#refusalIn(result);
      if (why !== undefined) this.#callout.announce(why.join(' '));
    });
    return undefined;
  }

  #refusalIn(result: EditResult | undefined): readonly string[] | undefined {
    if (result?.ok !== true || !result.changed) this.#announcement = undefined;
    if (result?.ok !== false) return undefined;
    const { reader } = this.#setting.sheet;
    return result.faults.map((fault) => {
      const { where, value, expected } = describeFault(fault, reader);
      return this.#words.refused(where, value, expected);
    });
  }

  /** Asks for undo or redo. */
  step(step: HistoryStep): void {
    this.#announcement = () => this.#withTotal(this.#words.announced[step]);
    const done = this.#setting.onHistory?.(step);
    if (done !== true && !(done instanceof Promise)) this.#announcement = undefined;
  }

  /** To be called when the sheet shows another state. */
  announce(): void {
    const announcement = this.#announcement;
    this.#announcement = undefined;
    if (announcement !== undefined) this.#callout.announce(announcement());
  }

  #changed(cells: readonly SheetCell[]): string {
    const { sheet } = this.#setting;
    const [only] = cells;
    const now = cells.length === 1 && only !== undefined ? sheet.now(only) : undefined;
    const { changed } = this.#words.announced;
    return this.#withTotal(now === undefined ? changed(sheet.format, cells.length) : sheet.describe(now));
  }

  #withTotal(happened: string): string {
    const total = this.#setting.sheet.describe({ row: TOTAL_ROW, column: SEASON_COLUMN });
    return this.#words.announced.withFigures(happened, total);
  }

  get #words() {
    return sheetActionsWords(this.#setting.sheet.reader.language);
  }
}

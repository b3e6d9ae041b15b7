import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { UnitSystem } from '../../engine/units.ts';
import type { FormChoice } from '../../exchange/csv/table-form.ts';
import type { TablePreview, UnknownTable } from '../../exchange/csv/table-from-csv.ts';
import type { Fault } from '../../plan/reading/fault.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { fetchPart } from '../shared/fetch-part.ts';
import { inSlices } from '../shared/in-slices.ts';
import { onceAnswered, type PlanConsumer } from '../shared/plan-consumer.ts';
import { type NotATable, readTextFile, type TextFile, textFile } from './read-text-file.ts';

/** How far a table has come. `file`: its name; undefined for a text that was pasted. */
export type ImportState =
  | { readonly step: 'none' | 'reading' | 'not-fetched' }
  | { readonly step: 'refused'; readonly file: string | undefined; readonly why: NotATable }
  /** It holds none of the tables that are known. */
  | { readonly step: 'unknown'; readonly file: string | undefined; readonly headings: readonly string[] }
  | {
      readonly step: 'preview';
      readonly file: string | undefined;
      readonly preview: TablePreview;
      /** What a person has said of how it is written. */
      readonly choice: FormChoice;
      /** Its cells are numbers and days already. */
      readonly isWorkbook: boolean;
      /** Why the plan refused the changes. */
      readonly faults: readonly Fault[];
    }
  | {
      readonly step: 'applied';
      readonly file: string | undefined;
      readonly count: number;
      readonly before: Plan;
      readonly after: Plan;
    };

type CsvWork = typeof import('./csv-work.ts');

/** Undefined where it cannot be fetched; the next call tries again. */
export const loadCsvWork = (): Promise<CsvWork | undefined> => fetchPart(() => import('./csv-work.ts'));

const NONE: ImportState = { step: 'none' };

/** A heading of a table of another kind may be a whole page. */
const MOST_HEADINGS = 8;
const HEADING_LETTERS = 40;

/** Steps of a table that are taken before the page is drawn again: some thousand rows. */
const STEPS_AT_ONCE = 20;

/** A table on its way in: read, previewed, and applied to the plan only when a person asks for that. */
export class TableImport implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #plan: PlanConsumer;
  #state: ImportState = NONE;
  /** Its sheets; of a text one alone. */
  #texts: readonly string[] = [];
  #isWorkbook = false;
  #units: UnitSystem | undefined;
  #choice: FormChoice = {};
  #work: CsvWork | undefined;
  /** The plan and the locale that the preview was made for. */
  #against: Plan | undefined;
  #locale = '';
  /** Counts the tables that were handed over, so that only the last of two is shown. */
  #turn = 0;

  constructor(host: ReactiveControllerHost, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    host.addController(this);
  }

  get state(): ImportState {
    return this.#state;
  }

  /** A preview always says what would change in the plan as it stands. */
  hostUpdate(): void {
    const { plan, locale, readOnly } = this.#plan.view;
    if (this.#state.step !== 'preview' || (plan === this.#against && locale === this.#locale)) return;
    if (plan === undefined || readOnly) this.#state = NONE;
    else this.#preview(this.#state.file);
  }

  async openFile(file: File): Promise<void> {
    await this.#open(file.name, readTextFile(file));
  }

  async openText(text: string): Promise<void> {
    await this.#open(undefined, Promise.resolve(textFile(text)));
  }

  /** The units of the columns whose heading names none. */
  readIn(units: UnitSystem): void {
    if (this.#state.step !== 'preview') return;
    this.#units = units;
    this.#preview(this.#state.file);
  }

  /** Says how the table is written, where it can be read in two ways. */
  readAs(choice: FormChoice): void {
    if (this.#state.step !== 'preview') return;
    this.#choice = { ...this.#choice, ...choice };
    this.#preview(this.#state.file);
  }

  /** Makes the changes as one step of history. `taken` is called where the plan took them. */
  apply(taken: () => void): void {
    const { state } = this;
    const before = this.#plan.view.plan;
    const edit = state.step === 'preview' ? state.preview.edit : undefined;
    if (state.step !== 'preview' || edit === undefined || before === undefined) return;
    const { file, preview } = state;
    onceAnswered(this.#plan.edit(edit), (result) => {
      this.#show(
        result.ok
          ? { step: 'applied', file, count: preview.changes.length, before, after: result.plan }
          : { ...state, faults: result.faults },
      );
      if (result.ok) taken();
    });
  }

  /** Changes nothing. */
  cancel(): void {
    this.#turn++;
    this.#texts = [];
    this.#show(NONE);
  }

  async #open(file: string | undefined, reading: Promise<TextFile>): Promise<void> {
    const turn = ++this.#turn;
    this.#show({ step: 'reading' });
    const [read, work] = await Promise.all([reading, loadCsvWork()]);
    if (turn !== this.#turn) return;
    if (work === undefined) return this.#show({ step: 'not-fetched' });
    if ('not' in read) {
      return this.#show(
        read.not === 'not-fetched' ? { step: 'not-fetched' } : { step: 'refused', file, why: read.not },
      );
    }
    this.#work = work;
    this.#isWorkbook = read.isWorkbook;
    this.#texts = read.texts;
    this.#units = undefined;
    this.#choice = {};
    this.#preview(file);
  }

  /** A table of some thousand rows at once; a longer one a little at a time, until another is handed over. */
  #preview(file: string | undefined): void {
    const { plan, season, locale } = this.#plan.view;
    this.#against = plan;
    this.#locale = locale;
    const turn = ++this.#turn;
    if (plan === undefined || this.#work === undefined) {
      this.#show(NONE);
      return;
    }
    const steps = this.#work.sheetsSteps(this.#texts, {
      plan,
      season,
      units: this.#units,
      locale,
      choice: this.#choice,
    });
    for (let count = 0; count < STEPS_AT_ONCE; count += 1) {
      const step = steps.next();
      if (step.done === true) {
        this.#showRead(file, step.value);
        return;
      }
    }
    this.#show({ step: 'reading' });
    inSlices({ steps, isWanted: () => turn === this.#turn, onEnd: (read) => this.#showRead(file, read) });
  }

  #showRead(file: string | undefined, read: TablePreview | UnknownTable): void {
    if (read.kind === undefined) {
      const headings = read.headings.slice(0, MOST_HEADINGS).map((heading) => heading.slice(0, HEADING_LETTERS));
      this.#show({ step: 'unknown', file, headings });
      return;
    }
    const [choice, isWorkbook] = [this.#choice, this.#isWorkbook];
    this.#show({ step: 'preview', file, preview: read, choice, isWorkbook, faults: [] });
  }

  #show(state: ImportState): void {
    this.#state = state;
    this.#host.requestUpdate();
  }
}

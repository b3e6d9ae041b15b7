import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { UnitSystem } from '../../engine/units.ts';
import type { TablePreview } from '../../exchange/csv/table-from-csv.ts';
import type { Fault } from '../../plan/reading/fault.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import { filesWords } from '../shared/words/files-words.ts';
import { type CsvWork, loadCsvWork } from './load-csv-work.ts';
import { readTextFile, type TextFile, textFile } from './read-text-file.ts';

export type Intake =
  | { readonly step: 'none' | 'reading' }
  /** `says` ends a sentence that begins with the name; without a name it is one. */
  | { readonly step: 'refused'; readonly name?: string | undefined; readonly says: string }
  | {
      readonly step: 'preview';
      readonly name: string;
      readonly preview: TablePreview;
      /** Why the plan refused what was to be taken in. */
      readonly faults: readonly Fault[];
    }
  | {
      readonly step: 'taken';
      readonly name: string;
      readonly count: number;
      readonly before: Plan;
      readonly after: Plan;
    };

const NONE: Intake = { step: 'none' };

/** A table on its way in: read, looked at, and taken over only when that is asked for. */
export class TableIntake implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #plan: PlanConsumer;
  #intake: Intake = NONE;
  #text = '';
  #units: UnitSystem | undefined;
  #work: CsvWork | undefined;
  /** The plan that the preview was made against. */
  #against: Plan | undefined;
  /** Counts what was handed over, so that only the last of two is shown. */
  #turn = 0;

  constructor(host: ReactiveControllerHost, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    host.addController(this);
  }

  get intake(): Intake {
    return this.#intake;
  }

  /** A preview always says what would change in the plan as it stands. */
  hostUpdate(): void {
    const { plan } = this.#plan.view;
    if (this.#intake.step !== 'preview' || plan === this.#against) return;
    if (plan === undefined || this.#plan.view.readOnly) this.#intake = NONE;
    else this.#preview(this.#intake.name);
  }

  async openFile(file: File): Promise<void> {
    await this.#open(filesWords.named(file.name), readTextFile(file));
  }

  async openText(text: string): Promise<void> {
    await this.#open(filesWords.pastedName, Promise.resolve(textFile(text)));
  }

  /** Of the columns whose heading names none. */
  readIn(units: UnitSystem): void {
    if (this.#intake.step !== 'preview') return;
    this.#units = units;
    this.#preview(this.#intake.name);
  }

  /** Makes the changes as one step of history. True where the plan took them. */
  takeIn(): boolean {
    const { intake } = this;
    const before = this.#plan.view.plan;
    if (intake.step !== 'preview' || intake.preview.edit === undefined || before === undefined) return false;
    const { name, preview } = intake;
    this.#plan.edit(intake.preview.edit);
    const { plan: after, faults } = this.#plan.view;
    const isTaken = after !== undefined && after !== before;
    this.#show(
      isTaken
        ? { step: 'taken', name, count: preview.changes.length, before, after }
        : { step: 'preview', name, preview, faults },
    );
    return isTaken;
  }

  /** Keeps nothing. */
  cancel(): void {
    this.#turn++;
    this.#text = '';
    this.#show(NONE);
  }

  async #open(name: string, reading: Promise<TextFile>): Promise<void> {
    const turn = ++this.#turn;
    this.#show({ step: 'reading' });
    const [file, work] = await Promise.all([reading, loadCsvWork()]);
    if (turn !== this.#turn) return;
    if (work === undefined) return this.#show({ step: 'refused', says: filesWords.notFetched });
    if ('not' in file) return this.#show({ step: 'refused', name, says: filesWords.notATable[file.not] });
    this.#work = work;
    this.#text = file.text;
    this.#units = undefined;
    this.#preview(name);
  }

  #preview(name: string): void {
    const { plan, season } = this.#plan.view;
    this.#against = plan;
    const read = plan && this.#work?.tableFromCsv(this.#text, { plan, season, units: this.#units });
    if (read === undefined) this.#show(NONE);
    else if (read.kind === undefined) {
      const headings = read.headings.map((heading) => `“${heading.slice(0, 40)}”`).slice(0, 8);
      this.#show({ step: 'refused', name, says: filesWords.unknown(headings.join(', ')) });
    } else this.#show({ step: 'preview', name, preview: read, faults: [] });
  }

  #show(intake: Intake): void {
    this.#intake = intake;
    this.#host.requestUpdate();
  }
}

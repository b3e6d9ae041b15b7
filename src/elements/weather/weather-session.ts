/** What is on its way into the plan: a file that is looked at, or what a weather service was asked for. */
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { dayNumber } from '../../engine/calendar.ts';
import type { DailyRecord } from '../../engine/record/daily-record.ts';
import type { WeatherFile, WeatherFileChoice, WeatherFileRefusal } from '../../exchange/weather-file/weather-file.ts';
import type { ServiceFailure } from '../../exchange/weather-service/request-weather.ts';
import type { ClimateChoice, ClimateTaken } from '../../exchange/weather-take/take-climate.ts';
import type { ReadingsChoice } from '../../exchange/weather-take/take-readings.ts';
import type { SeasonTaken } from '../../exchange/weather-take/take-season.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Fault } from '../../plan/reading/fault.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { fetchPart } from '../shared/fetch-part.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import { inWorker } from './in-worker.ts';
import { sliced } from './slices.ts';

export type SessionState =
  | { readonly step: 'none' }
  | { readonly step: 'busy'; readonly what: 'asking' | 'reading' }
  | {
      readonly step: 'file';
      readonly name: string;
      readonly file: WeatherFile;
      readonly choice: WeatherFileChoice;
      readonly bridge: boolean;
    }
  | { readonly step: 'took-climate'; readonly taken: ClimateTaken; readonly after: Plan }
  | { readonly step: 'took-season'; readonly taken: SeasonTaken; readonly after: Plan }
  | { readonly step: 'failed'; readonly why: SessionFailure };

export type SessionFailure =
  | { readonly from: 'service'; readonly why: ServiceFailure }
  | { readonly from: 'answer'; readonly why: WeatherFileRefusal }
  | { readonly from: 'file' | 'part' | 'too-little' | 'nothing-new' | 'not-started' }
  | { readonly from: 'plan'; readonly faults: readonly Fault[] };

type Work = typeof import('./weather-work.ts');

const NONE: SessionState = { step: 'none' };

export class WeatherSession implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #plan: PlanConsumer;
  #text = '';
  /** Counts what was asked for: of two only the last is shown. */
  #turn = 0;
  #wait = new AbortController();
  #documentId: number | undefined;
  state: SessionState = NONE;
  /** What the state is of. */
  origin: 'service' | 'file' = 'file';

  constructor(host: ReactiveControllerHost, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    host.addController(this);
  }

  /** What is looked at belongs to the plan for which it was opened. */
  hostUpdate(): void {
    const { documentId } = this.#plan.view;
    if (documentId !== this.#documentId && this.#documentId !== undefined) this.cancel();
    this.#documentId = documentId;
  }

  hostDisconnected(): void {
    this.cancel();
  }

  cancel(): void {
    this.#begin();
    this.state = NONE;
  }

  close(): void {
    this.cancel();
    this.#host.requestUpdate();
  }

  async openFile(name: string, text: Promise<string | undefined>): Promise<void> {
    const turn = this.#begin();
    this.origin = 'file';
    this.#show({ step: 'busy', what: 'reading' });
    const read = await text;
    if (turn !== this.#turn) return;
    if (read === undefined) return this.#fail({ from: 'file' });
    this.#text = read;
    await this.#read(name, {}, turn);
  }

  /** A person has answered what the file leaves open. */
  async answer(choice: WeatherFileChoice): Promise<void> {
    const { state } = this;
    if (state.step === 'file') await this.#read(state.name, { ...state.choice, ...choice }, this.#begin());
  }

  bridge(bridge: boolean): void {
    if (this.state.step === 'file') this.#show({ ...this.state, bridge });
  }

  async takeClimate(record: DailyRecord, choice: (plan: Plan) => ClimateChoice): Promise<void> {
    const turn = this.#begin();
    await this.#climate(record, choice, turn);
  }

  async takeSeason(record: DailyRecord, today: string, bridge: boolean): Promise<void> {
    const turn = this.#begin();
    const work = await this.#work(turn);
    if (work !== undefined) await this.#season(work, [record], today, { source: 'file', bridge });
  }

  /** A file at an address: fetched, then shown for what it is as one that was chosen. */
  async openAddress(name: string, address: URL): Promise<void> {
    const turn = this.#begin();
    this.origin = 'service';
    this.#show({ step: 'busy', what: 'asking' });
    const work = await this.#work(turn);
    const text = work && (await this.#answer(work, address, turn));
    if (text === undefined) return;
    this.#text = text;
    await this.#read(name, {}, turn);
  }

  /** Asks for every address in turn; the records come in the order of the addresses. */
  async ask(
    addresses: readonly URL[],
    then: (records: readonly WeatherFile[], work: Work) => void | Promise<void>,
  ): Promise<void> {
    const turn = this.#begin();
    this.origin = 'service';
    this.#show({ step: 'busy', what: 'asking' });
    const work = await this.#work(turn);
    if (work === undefined) return;
    const files: WeatherFile[] = [];
    for (const address of addresses) {
      const text = await this.#answer(work, address, turn);
      if (text === undefined) return;
      const file = await sliced(work.weatherFileSteps(text), () => turn === this.#turn);
      if (file === undefined) return;
      if (file.record === undefined) return this.#fail({ from: 'answer', why: file.refused ?? { code: 'no-days' } });
      files.push(file);
    }
    await then(files, work);
  }

  /** A service's years, taken at once: what it is was said before it was asked. */
  async climateOf(file: WeatherFile, choice: (plan: Plan) => ClimateChoice): Promise<void> {
    if (file.record !== undefined) await this.#climate(file.record, choice, this.#turn);
  }

  seasonOf(files: readonly WeatherFile[], work: Work, today: string): Promise<void> {
    return this.#season(
      work,
      files.flatMap(({ record }) => (record === undefined ? [] : [record])),
      today,
      { source: 'service' },
    );
  }

  /** Undefined, and said so, where none comes; undefined where something else was asked for since. */
  async #answer(work: Work, address: URL, turn: number): Promise<string | undefined> {
    const answer = await work.requestWeather(address, { signal: this.#wait.signal });
    if (turn !== this.#turn) return undefined;
    if (answer.ok) return answer.text;
    if (answer.why.code !== 'cancelled') this.#fail({ from: 'service', why: answer.why });
    return undefined;
  }

  async #climate(record: DailyRecord, choice: (plan: Plan) => ClimateChoice, turn: number): Promise<void> {
    this.#show({ step: 'busy', what: 'reading' });
    const work = await this.#work(turn);
    const { plan } = this.#plan.view;
    if (work === undefined || plan === undefined) return;
    const args = [record, plan, choice(plan)] as const;
    const taken = await inWorker({
      name: 'climate',
      args: [...args],
      steps: () => work.climateSteps(...args),
      isWanted: () => turn === this.#turn,
    });
    if (taken === undefined) return;
    if (taken.edit === undefined) return this.#fail({ from: 'too-little' });
    const after = await this.#apply(taken.edit);
    if (after !== undefined) this.#show({ step: 'took-climate', taken, after });
  }

  async #season(work: Work, records: readonly DailyRecord[], today: string, choice: ReadingsChoice): Promise<void> {
    const { plan } = this.#plan.view;
    if (plan === undefined) return;
    const day = dayNumber(today);
    const taken = work.takeSeason(records, plan, day, choice);
    if (taken.edit === undefined) {
      this.#fail({ from: day <= dayNumber(plan.season.firstDay) ? 'not-started' : 'nothing-new' });
      return;
    }
    const after = await this.#apply(taken.edit);
    if (after !== undefined) this.#show({ step: 'took-season', taken, after });
  }

  async #apply(edit: Edit): Promise<Plan | undefined> {
    const result = await this.#plan.edit(edit);
    if (result.ok) return result.plan;
    this.#fail({ from: 'plan', faults: result.faults });
    return undefined;
  }

  async #read(name: string, choice: WeatherFileChoice, turn: number): Promise<void> {
    const work = await this.#work(turn);
    if (work === undefined) return;
    const { locale } = this.#plan.view;
    const file = await sliced(work.weatherFileSteps(this.#text, choice, locale), () => turn === this.#turn);
    if (file !== undefined) this.#show({ step: 'file', name, file, choice, bridge: false });
  }

  /** Undefined, and said so, where it cannot be fetched; undefined where something else was asked for since. */
  async #work(turn: number): Promise<Work | undefined> {
    const work = await fetchPart(() => import('./weather-work.ts'));
    if (turn !== this.#turn) return undefined;
    // Without a connection the service would be no nearer than the part.
    const isService = this.origin === 'service';
    if (work === undefined)
      this.#fail(isService ? { from: 'service', why: { code: 'unreachable' } } : { from: 'part' });
    return work;
  }

  #begin(): number {
    this.#wait.abort();
    this.#wait = new AbortController();
    this.#turn += 1;
    return this.#turn;
  }

  #fail(why: SessionFailure): void {
    this.#show({ step: 'failed', why });
  }

  #show(state: SessionState): void {
    this.state = state;
    this.#host.requestUpdate();
  }
}

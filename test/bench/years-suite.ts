/**
 * The season over thirty years, as a page has them from its worker: ours against the bare loop, whose season of a year is run without its
 * kept rain, as ours is.
 */
import { MessageChannel, receiveMessageOnPort, Worker } from 'node:worker_threads';
import { rainSharesOf } from '../../src/elements/shared/worker/rain-shares.ts';
import type { Asked, Told } from '../../src/elements/shared/worker/worker-messages.ts';
import { dayNumber } from '../../src/engine/calendar.ts';
import { gardenInYear } from '../../src/engine/years/year-seasons.ts';
import { computeSeason } from '../../src/plan/compute-season.ts';
import { packedYears } from '../../src/plan/packed-years.ts';
import type { Plan } from '../../src/plan/schema/plan-schema.ts';
import { Bare } from './bare/bare.ts';
import { hold } from './contest.ts';
import { benchGarden } from './gardens.ts';
import type { Outcome, Suite } from './outcome.ts';

const ZONES = 50;
const YEARS = 30;
const FIRST_DAY = dayNumber('1990-01-01');
/** The last season runs on into the next year. */
const DAYS = dayNumber('2021-01-05') - FIRST_DAY;

export const yearsSuite: Suite = { name: 'years', outcomes };

function* outcomes(): Generator<Outcome> {
  const plan = withYears(benchGarden(ZONES));
  const season = computeSeason(plan);
  const { basis, years } = season.weather.years();
  if (basis !== 'record' || years !== YEARS) throw new Error(`there are ${years} years (${basis})`);
  const bares = Array.from({ length: YEARS }, (_, year) => new Bare(gardenInYear(season, year)));
  for (const bare of bares) bare.run();
  const worker = new YearsWorker();
  const args = [plan, rainSharesOf(season)];
  yield hold({
    name: `${YEARS} years, ${ZONES} zones`,
    // From the plan that is handed over to the outcomes that are handed back.
    ours: { run: () => worker.result({ name: 'years', args }), warmUps: 6, rounds: 9 },
    // Rain of the first week, as it may have been: every week after it is run again.
    limit: { run: () => bares.map((bare, year) => bare.setRain(0, year)), warmUps: 3, rounds: 9 },
    asked: { oursMs: 500 },
  });
  worker.end();
}

/** Invented: a dry summer, and rain that another day brings each year. */
function withYears(plan: Plan): Plan {
  const wetness = (day: number) => 1 + Math.cos((2 * Math.PI * day) / 365.25);
  const rainMm = Float64Array.from({ length: DAYS }, (_, day) => ((day * 7919) % 11 < 3 ? 5 * wetness(day) : 0));
  const etoMm = Float64Array.from({ length: DAYS }, (_, day) => 5 - 2 * wetness(day) + ((day * 104_729) % 7) / 5);
  const years = packedYears({
    ...{ firstDay: FIRST_DAY, rainMm, etoMm, source: 'invented', season: plan.season },
    mostCharacters: Number.POSITIVE_INFINITY,
  });
  if (years === undefined) throw new Error('the years are not packed');
  return { ...plan, site: { ...plan.site, years } };
}

/** A worker thread whose result this thread waits for, so that the processor's time is the worker's. */
class YearsWorker {
  readonly #results = new Int32Array(new SharedArrayBuffer(4));
  readonly #told = new MessageChannel();
  readonly #worker = new Worker(new URL('years-worker.ts', import.meta.url), {
    workerData: { results: this.#results, port: this.#told.port2 },
    transferList: [this.#told.port2],
  });
  #asked = 0;

  result(task: NonNullable<Asked['task']>): unknown {
    const id = ++this.#asked;
    this.#told.port1.postMessage({ id, task } satisfies Asked);
    Atomics.wait(this.#results, 0, id - 1);
    for (;;) {
      const told: Told | undefined = receiveMessageOnPort(this.#told.port1)?.message;
      if (told?.step === 'done') return told.result;
      if (told === undefined || told.step === 'failed') throw new Error('the worker has no result');
    }
  }

  end(): void {
    void this.#worker.terminate();
    this.#told.port1.close();
  }
}

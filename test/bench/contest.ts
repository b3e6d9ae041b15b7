/** One thing measured two or three ways, turn by turn: ours, the peer's, and the limit. */
import { Bench } from 'tinybench';
import { type Asked, type Outcome, outcome } from './outcome.ts';

export interface Contest {
  readonly name: string;
  readonly ours: Runner;
  readonly peer?: Runner | undefined;
  readonly limit?: Runner | undefined;
  readonly asked?: Asked | undefined;
}

export interface Runner {
  /** What is timed. */
  readonly run: () => unknown;
  /** Before each run, outside the time. */
  readonly prepare?: () => void;
  /** Runs before those that count, and those. */
  readonly warmUps: number;
  readonly rounds: number;
}

/**
 * Time that this process has had of the processor, ms: whoever else is busy on the machine counts little, and turn by
 * turn it counts for each alike. Collecting garbage counts.
 */
function processorMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

export function hold({ name, ours, peer, limit, asked }: Contest): Outcome {
  const turns = { ours: turnOf(ours), peer: peer && turnOf(peer), limit: limit && turnOf(limit) };
  const all = Object.values(turns).filter((turn) => turn !== undefined);
  for (const { warmUp } of all) warmUp();
  const rounds = Math.max(...all.map((turn) => turn.rounds));
  for (let round = 0; round < rounds; round++) {
    for (const turn of all) if (round < turn.rounds) turn.take();
  }
  const times = {
    ours: turns.ours.median(),
    peer: turns.peer?.median() ?? null,
    limit: turns.limit?.median() ?? null,
  };
  return outcome(name, times, asked);
}

function turnOf({ run, prepare, rounds, warmUps }: Runner) {
  const samples: number[] = [];
  const bench = new Bench({
    now: processorMs,
    iterations: 1,
    time: 0,
    warmup: false,
    throws: true,
    subtractTimerOverhead: true,
  });
  bench.add('turn', run, { async: false, ...(prepare ? { beforeEach: prepare } : {}) });
  return {
    rounds,
    warmUp() {
      for (let place = 0; place < warmUps; place++) timeOnce(bench);
    },
    take() {
      samples.push(timeOnce(bench));
    },
    median: () => medianOf(samples),
  };
}

function timeOnce(bench: Bench): number {
  bench.reset();
  const result = bench.runSync()[0]?.result;
  if (result?.state !== 'completed') throw new Error('a run did not complete');
  return result.latency.p50;
}

export function medianOf(samples: readonly number[]): number {
  const sorted = samples.toSorted((one, other) => one - other);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : (upper + (sorted[middle - 1] ?? Number.NaN)) / 2;
}

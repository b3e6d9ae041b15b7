/** One thing measured two or three ways: ours and the limit turn by turn, the peer before them. */
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { Bench } from 'tinybench';
import { type Asked, type Outcome, outcome } from './outcome.ts';

export interface Contest {
  readonly name: string;
  readonly ours: Runner;
  /** Made when its time has come and let go after it: the collector would walk through all that it holds in our time. */
  readonly peer?: (() => Runner) | undefined;
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
  const peerMs = peer === undefined ? null : medianAlone(peer);
  collectGarbage();
  const [oursMs = Number.NaN, limitMs = null] = mediansOf(limit === undefined ? [ours] : [ours, limit]);
  return outcome(name, { ours: oursMs, peer: peerMs, limit: limitMs }, asked);
}

/** In a frame of its own, so that nothing of it is held once it is done. */
function medianAlone(make: () => Runner): number {
  const [ms = Number.NaN] = mediansOf([make()]);
  return ms;
}

/** Of each, ms: all of them turn by turn. */
function mediansOf(runners: readonly Runner[]): readonly number[] {
  const turns = runners.map(turnOf);
  for (const { warmUp } of turns) warmUp();
  const rounds = Math.max(...turns.map((turn) => turn.rounds));
  for (let round = 0; round < rounds; round++) {
    for (const turn of turns) if (round < turn.rounds) turn.take();
  }
  return turns.map((turn) => turn.median());
}

setFlagsFromString('--expose-gc');
const collectGarbage: () => void = runInNewContext('gc');

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

/** Medians of several things measured in turn (A B C, A B C, …), so that a machine whose speed drifts treats all alike. */

export interface Timed {
  readonly run: () => void;
  /** Left out: measured in each round. A slow one may sit out all but the first so many rounds. */
  readonly rounds?: number | undefined;
}

export function mediansMs<Name extends string>(
  timed: Readonly<Record<Name, Timed>>,
  rounds: number,
): Readonly<Record<Name, number>> {
  const names = Object.keys(timed) as Name[];
  const times = Object.fromEntries(names.map((name) => [name, [] as number[]])) as Record<Name, number[]>;
  for (let round = 0; round < rounds; round++) {
    for (const name of names) {
      const { run, rounds: most = rounds } = timed[name];
      if (round >= most) continue;
      const start = performance.now();
      run();
      times[name].push(performance.now() - start);
    }
  }
  return Object.fromEntries(names.map((name) => [name, median(times[name])])) as Record<Name, number>;
}

function median(values: readonly number[]): number {
  const sorted = values.toSorted((left, right) => left - right);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

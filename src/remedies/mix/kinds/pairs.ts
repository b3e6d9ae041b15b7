/** Two changes at once: of the best single ones, and the same dripline for two plantings that both set the minutes. */
import type { LaidPlanting, MixContext } from '../mix-context.ts';
import { goodsTogether, type MixCandidate, type MixChange } from '../remedy.ts';
import { driplineSizes, replaceDripline } from './dripline.ts';

/** Of so many of the thirstiest plantings, each two are tried with the same dripline. */
const THIRSTIEST = 3;

/** Line first, then the valve in front of it, then the zone: each edit still finds what it names. */
const ORDER = { dripline: 0, runs: 0, emitters: 0, sprays: 0, 'shut-off': 1, rule: 2, cut: 3 } as const;

/** Every two of the candidates that do not undo each other. */
export function pairsOf(singles: readonly MixCandidate[]): readonly MixCandidate[] {
  return singles.flatMap((one, index) => singles.slice(index + 1).flatMap((other) => pairOf(one, other) ?? []));
}

/** No change of one is enough where two plantings ask for the same: each would still be waited for. */
export function sameDriplineTwice(context: MixContext): readonly MixCandidate[] {
  const thirstiest = context.needs
    .toSorted((one, other) => other.total - one.total)
    .flatMap(({ plantingId }) => context.laid.find(({ planting }) => planting.id === plantingId) ?? [])
    .slice(0, THIRSTIEST);
  return eachTwo(thirstiest).flatMap(([one, other]) =>
    driplineSizes(context.catalogue).flatMap((size) => {
      const [first, second] = [replaceDripline(context, one, size), replaceDripline(context, other, size)];
      return first === undefined || second === undefined ? [] : (pairOf(first, second) ?? []);
    }),
  );
}

function pairOf(one: MixCandidate, other: MixCandidate): MixCandidate | undefined {
  const [first, second] = orderOf(one) <= orderOf(other) ? [one, other] : [other, one];
  const changes = [...first.changes, ...second.changes];
  if (new Set(changes.map(partOf)).size < changes.length) return undefined;
  return {
    changes,
    goods: goodsTogether(first.goods, second.goods),
    edits: [...first.edits, ...second.edits],
  };
}

function orderOf({ changes }: MixCandidate): number {
  return Math.max(...changes.map(({ kind }) => ORDER[kind]));
}

/** What a change takes in hand: nothing is changed twice. */
function partOf(change: MixChange): string {
  if (change.kind === 'cut' || change.kind === 'rule') return 'zone';
  return `${change.plantingId} ${change.kind === 'shut-off' ? 'shut-off' : 'line'}`;
}

function eachTwo(laid: readonly LaidPlanting[]): readonly (readonly [LaidPlanting, LaidPlanting])[] {
  return laid.flatMap((one, index) => laid.slice(index + 1).map((other) => [one, other] as const));
}

/** A plan as a browser keeps it between visits: the plan, and which tabs' changes are in it. */
import { checkPlan } from '../plan/reading/check-plan.ts';
import type { Fault } from '../plan/reading/fault.ts';
import { type Loose, recordIn } from '../plan/reading/loose.ts';
import type { Plan } from '../plan/schema/plan-schema.ts';

const FORMAT = 'runnel-kept';
const VERSION = 1;

/** More writers than ever have one plan open at a time. */
const MOST_WRITERS = 20;

/** One writing of a plan: by which tab, and its number, which rises with each writing. */
export interface Stamp {
  readonly writer: string;
  readonly revision: number;
}

export interface KeptPlan extends Stamp {
  /** The last revision of each other writer whose changes this plan contains. */
  readonly seen: Readonly<Record<string, number>>;
  /** Address of the page's own plan, where there was one. */
  readonly base?: string | undefined;
  /** The instant of the writing, ISO 8601. */
  readonly saved: string;
  readonly plan: Plan;
}

export type KeptReading =
  | { readonly ok: true; readonly kept: KeptPlan }
  | { readonly ok: false; readonly faults: readonly Fault[] };

export function writeKept({ seen, ...kept }: KeptPlan): string {
  return JSON.stringify({ format: FORMAT, version: VERSION, ...kept, seen: newestOf(seen) });
}

/** Reads what `writeKept` wrote; whatever else stands there is refused in words. It never throws. */
export function readKept(text: string): KeptReading {
  const document = parsed(text);
  if (document === undefined) return refused('the text', 'what this page wrote there: it is damaged');
  const { format, version, writer, revision, saved, base } = document;
  if (typeof version === 'number' && version > VERSION) {
    return refused(`version ${version}`, `version ${VERSION} or older: a newer edition of this page wrote it`);
  }
  const isKept = format === FORMAT && typeof writer === 'string' && Number.isSafeInteger(revision);
  if (!isKept || typeof saved !== 'string' || Number.isNaN(Date.parse(saved))) {
    return refused('its heading', 'who wrote it, when and how often: it is damaged');
  }
  const result = checkPlan(document['plan']);
  if (!result.ok) return result;
  const kept = { writer, revision: revision as number, saved, seen: countsIn(document['seen']), plan: result.plan };
  return { ok: true, kept: typeof base === 'string' ? { ...kept, base } : kept };
}

/** Whether the changes of a writing are in a kept plan. */
export function contains(kept: KeptPlan, { writer, revision }: Stamp): boolean {
  return (kept.writer === writer ? kept.revision : (kept.seen[writer] ?? -1)) >= revision;
}

/** What a plan has seen that contains the changes of these. */
export function seenIn(...plans: readonly (KeptPlan | undefined)[]): Record<string, number> {
  const seen: Record<string, number> = {};
  for (const plan of plans) {
    if (plan === undefined) continue;
    for (const [writer, revision] of [...Object.entries(plan.seen), [plan.writer, plan.revision] as const]) {
      seen[writer] = Math.max(seen[writer] ?? 0, revision);
    }
  }
  return seen;
}

function parsed(text: string): Loose | undefined {
  try {
    return recordIn(JSON.parse(text));
  } catch {
    return undefined;
  }
}

function countsIn(value: unknown): Record<string, number> {
  const counts = Object.entries(recordIn(value) ?? {});
  return Object.fromEntries(counts.filter((count): count is [string, number] => Number.isSafeInteger(count[1])));
}

function newestOf(seen: KeptPlan['seen']): KeptPlan['seen'] {
  const newest = Object.entries(seen).sort(([, left], [, right]) => right - left);
  return Object.fromEntries(newest.slice(0, MOST_WRITERS));
}

function refused(value: string, expected: string): KeptReading {
  return { ok: false, faults: [{ path: '', where: 'What was kept', value, expected }] };
}

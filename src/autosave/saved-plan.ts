/** A plan as a browser saves it between visits: the plan, and which tabs' changes are in it. */
import { checkPlan } from '../plan/reading/check-plan.ts';
import type { Fault } from '../plan/reading/fault.ts';
import { type Loose, recordIn } from '../plan/reading/loose.ts';
import type { Plan } from '../plan/schema/plan-schema.ts';

/** Named as version 0.1.0 named it: what it saved is read. */
const FORMAT = 'runnel-kept';
const VERSION = 1;

/** More writers than ever have one plan open at a time. */
const MOST_WRITERS = 20;

/** One writing of a plan: by which tab, and its number, which rises with each writing. */
export interface Revision {
  readonly writer: string;
  readonly revision: number;
}

export interface SavedPlan extends Revision {
  /** The last revision of each other writer whose changes this plan contains. */
  readonly seen: Readonly<Record<string, number>>;
  /** Address of the page's own plan, where there was one. */
  readonly base?: string | undefined;
  /** The instant of the writing, ISO 8601. */
  readonly saved: string;
  readonly plan: Plan;
}

/** Why a stored text is no saved plan. `newer`: a newer version of this kit wrote it. `plan`: the plan in it has faults. */
export type SavedPlanDamage =
  | { readonly code: 'unreadable' | 'no-heading' | 'newer' }
  | { readonly code: 'plan'; readonly faults: readonly Fault[] };

export type SavedPlanReading =
  | { readonly ok: true; readonly saved: SavedPlan }
  | { readonly ok: false; readonly damage: SavedPlanDamage };

export function writeSavedPlan({ seen, ...saved }: SavedPlan): string {
  return JSON.stringify({ format: FORMAT, version: VERSION, ...saved, seen: newestOf(seen) });
}

/** Reads what `writeSavedPlan` wrote. It never throws. */
export function readSavedPlan(text: string): SavedPlanReading {
  const document = parsed(text);
  if (document === undefined) return damaged('unreadable');
  const { format, version, writer, revision, saved, base } = document;
  if (typeof version === 'number' && version > VERSION) return damaged('newer');
  const isOurs = format === FORMAT && typeof writer === 'string' && Number.isInteger(revision);
  if (!isOurs || typeof saved !== 'string' || Number.isNaN(Date.parse(saved))) return damaged('no-heading');
  const result = checkPlan(document['plan']);
  if (!result.ok) return { ok: false, damage: { code: 'plan', faults: result.faults } };
  const read = {
    writer,
    revision: wholeOf(revision as number),
    saved,
    seen: countsIn(document['seen']),
    plan: result.plan,
  };
  return { ok: true, saved: typeof base === 'string' ? { ...read, base } : read };
}

/** Undefined where there is no text, and where it is no saved plan. */
export function savedPlanIn(text: string | undefined): SavedPlan | undefined {
  const reading = text === undefined ? undefined : readSavedPlan(text);
  return reading?.ok === true ? reading.saved : undefined;
}

/** Whether the changes of a writing are in a saved plan. */
export function contains(saved: SavedPlan, { writer, revision }: Revision): boolean {
  return (saved.writer === writer ? saved.revision : (saved.seen[writer] ?? -1)) >= revision;
}

/** What a plan has seen that contains the changes of these. */
export function seenIn(...plans: readonly (SavedPlan | undefined)[]): Record<string, number> {
  const seen: Record<string, number> = {};
  for (const plan of plans) {
    if (plan === undefined) continue;
    for (const [writer, revision] of [...Object.entries(plan.seen), [plan.writer, plan.revision] as const]) {
      seen[writer] = Math.max(seen[writer] ?? 0, revision);
    }
  }
  return seen;
}

/**
 * Which of two stored texts a visit begins with: `main`, which is written at once, or `mirror`, which is written a little later but
 * reaches the disk sooner. `both`: each has changes that the other lacks.
 */
export function newerOf(
  main: SavedPlanReading | undefined,
  mirror: SavedPlanReading | undefined,
): 'main' | 'mirror' | 'both' {
  if (mirror === undefined || !mirror.ok) return 'main';
  if (main === undefined || !main.ok) return 'mirror';
  if (contains(main.saved, mirror.saved)) return 'main';
  return contains(mirror.saved, main.saved) ? 'mirror' : 'both';
}

function parsed(text: string): Loose | undefined {
  try {
    return recordIn(JSON.parse(text));
  } catch {
    return undefined;
  }
}

/** Above this whole numbers are no longer told apart. */
const wholeOf = (revision: number) => Math.min(Number.MAX_SAFE_INTEGER, revision);

function countsIn(value: unknown): Record<string, number> {
  const counts = Object.entries(recordIn(value) ?? {});
  return Object.fromEntries(counts.filter((count): count is [string, number] => Number.isSafeInteger(count[1])));
}

function newestOf(seen: SavedPlan['seen']): SavedPlan['seen'] {
  const newest = Object.entries(seen).sort(([, left], [, right]) => right - left);
  return Object.fromEntries(newest.slice(0, MOST_WRITERS));
}

function damaged(code: 'unreadable' | 'no-heading' | 'newer'): SavedPlanReading {
  return { ok: false, damage: { code } };
}

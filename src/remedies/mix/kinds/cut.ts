/** The zone cut in two by need: those that ask for more minutes in one, those that ask for fewer in the other. */
import type { Edit } from '../../../plan/edits/edit.ts';
import { newZoneId } from '../../../plan/ids.ts';
import type { Plan, PlanWeekRun, PlanZone } from '../../../plan/schema/plan-schema.ts';
import type { MixContext } from '../mix-context.ts';
import { type MixCandidate, NO_GOODS } from '../remedy.ts';

/** A cut at every step of the needs; the smaller side is the one that moves. */
export function cutCandidates({ plan, zone, needs }: MixContext): readonly MixCandidate[] {
  const byNeed = needs.toSorted((one, other) => one.total - other.total);
  return byNeed.slice(1).flatMap((need, index) => {
    if (need.total === byNeed[index]?.total) return [];
    const low = byNeed.slice(0, index + 1);
    const high = byNeed.slice(index + 1);
    return [
      cutOff(
        plan,
        zone,
        (low.length < high.length ? low : high).map(({ plantingId }) => plantingId),
      ),
    ];
  });
}

/** The new zone is like the old one but for its rule; what really ran, and the weeks closed by hand, hold for both. */
export function cutOff(plan: Plan, zone: PlanZone, plantingIds: readonly string[]): MixCandidate {
  const { rule: _rule, plantings, ...like } = zone;
  const name = freeName(plan, zone.name);
  const newZone: PlanZone = { ...like, id: newZoneId(plan, name), name, plantings: [] };
  const moving = plantings.filter(({ id }) => plantingIds.includes(id));
  const index = plan.zones.findIndex(({ id }) => id === zone.id);
  return {
    changes: [{ kind: 'cut', newZoneId: newZone.id, newZoneName: name, moved: moving.map(({ id }) => id) }],
    goods: { ...NO_GOODS, valves: 1 },
    edits: [
      { type: 'add-zone', zone: newZone, at: index + 1 },
      ...moving.map(({ id }): Edit => ({ type: 'move-planting', zone: zone.id, planting: id, toZone: newZone.id })),
      ...sharedWeeks(plan, zone.id, newZone.id, plantingIds),
    ],
  };
}

function sharedWeeks(plan: Plan, from: string, to: string, moving: readonly string[]): readonly Edit[] {
  const runs = Object.entries(plan.log?.runs?.[from] ?? {});
  const closed = Object.entries(plan.choices?.[from] ?? {}).filter(([, choice]) => choice.closed === true);
  return [
    ...runs.flatMap(([week, run]) => runEdits(run, week, { to, moving })),
    ...closed.map(([week]): Edit => ({ type: 'close-week', zone: to, week, closed: true })),
  ];
}

/** Of the shut-offs that were open, those of the plantings that move. */
function runEdits(
  run: PlanWeekRun,
  week: string,
  { to, moving }: { readonly to: string; readonly moving: readonly string[] },
): readonly Edit[] {
  if (typeof run === 'number') return [{ type: 'set-minutes-run', zone: to, week, minutes: run }];
  const days = Object.entries(run.days).map(
    ([day, { minutes, open }]) =>
      [day, { minutes, ...(open && { open: open.filter((id) => moving.includes(id)) }) }] as const,
  );
  return [{ type: 'set-week-run', zone: to, week, run: { ...run, days: Object.fromEntries(days) } }];
}

/** `Border 2`, or the next number that no zone has. */
function freeName({ zones }: Plan, name: string): string {
  const taken = new Set(zones.map((zone) => zone.name));
  const stem = name.slice(0, LONGEST_STEM);
  let number = 2;
  while (taken.has(`${stem} ${number}`)) number++;
  return `${stem} ${number}`;
}

const LONGEST_STEM = 60;

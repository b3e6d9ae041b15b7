/** Next year's plan from this one: the same garden, its lines laid again, its plantings as a person says, its weather kept. */
import { addDays, dayNumber, type IsoDate } from '../../engine/calendar.ts';
import { newPlantingId } from '../ids.ts';
import type { Plan, PlanLine, PlanPlanting, PlanSeason, PlanSupply, PlanZone } from '../schema/plan-schema.ts';
import { seasonDays } from '../season-weeks.ts';
import { yearsWithSeason } from './season-as-year.ts';

/** What becomes of a planting: it stays where it is, moves to another zone, or is not there any more. */
export type PlantingFate =
  | { readonly kind: 'stays' }
  | { readonly kind: 'moves'; readonly toZone: string }
  | { readonly kind: 'ends' };

export interface NextYearChoice {
  /** Left out: that of this plan, with the next year's number where it has this one's. */
  readonly name?: string | undefined;
  /** Left out: as many weeks, from the same weekday a year on. */
  readonly season?: PlanSeason | undefined;
  /** By planting's id; one that is not named stays. */
  readonly plantings?: ReadonlyMap<string, PlantingFate> | undefined;
  /** New plantings, each with an id of its own. */
  readonly added?: readonly NewPlanting[] | undefined;
  /** How the years that are kept say where this season's weather comes from. Left out: the season is not kept as a year. */
  readonly source?: string | undefined;
}

export interface NewPlanting {
  readonly zone: string;
  readonly planting: Omit<PlanPlanting, 'id'>;
}

/** Weeks of a year: the same weekday, and the same date to a day or two. */
const YEAR_DAYS = 7 * 52;

/** The season that is usual for the next year. */
export function nextSeason({ firstDay, weeks }: PlanSeason): PlanSeason {
  return { firstDay: addDays(firstDay, YEAR_DAYS), weeks };
}

/** The name with the year of the season's first day raised by one, where it has it. */
export function nextName({ name, season }: Plan): string {
  const year = season.firstDay.slice(0, 4);
  return name.replaceAll(new RegExp(`(?<!\\d)${year}(?!\\d)`, 'g'), String(Number(year) + 1));
}

/**
 * A plan of its own; the one that it is made of stays as it is. Days in the ground and sowing days move with the season. A planting that
 * went into the ground this season and stays is there from the start. Lines that lay at the season's end lie from the start. What was
 * observed, run, set by hand and noted stays with this year's plan; its weather becomes a real year of the next one's, where nearly
 * all of its days were read. A restriction moves with the season; a cut, and what was expected of some of its weeks, was this year's.
 */
export function nextYear(plan: Plan, choice: NextYearChoice = {}): Plan {
  const season = choice.season ?? nextSeason(plan.season);
  const move: Move = {
    days: dayNumber(season.firstDay) - dayNumber(plan.season.firstDay),
    before: seasonDays(plan.season),
    firstDay: season.firstDay,
  };
  const { log: _log, choices: _choices, supply, ...kept } = plan;
  const { departures: _departures, ...site } = plan.site;
  const years = choice.source === undefined ? plan.site.years : yearsWithSeason(plan, choice.source);
  const next: Plan = {
    ...kept,
    name: choice.name ?? nextName(plan),
    season,
    site: { ...site, ...(years && { years }) },
    ...(supply && { supply: supplyOf(supply, move) }),
    zones: zonesOf(plan, choice.plantings ?? new Map(), move),
  };
  return (choice.added ?? []).reduce(withAdded, next);
}

interface Move {
  /** From this season's first day to the next one's. */
  readonly days: number;
  /** This season's first and last day. */
  readonly before: { readonly first: number; readonly last: number };
  readonly firstDay: IsoDate;
}

const STAYS: PlantingFate = { kind: 'stays' };

function zonesOf({ zones }: Plan, fates: ReadonlyMap<string, PlantingFate>, move: Move): readonly PlanZone[] {
  const fateOf = ({ id }: PlanPlanting) => fates.get(id) ?? STAYS;
  const moved = zones.flatMap(({ plantings }) =>
    plantings.flatMap((planting) => {
      const fate = fateOf(planting);
      return fate.kind === 'moves' ? [{ toZone: fate.toZone, planting }] : [];
    }),
  );
  return zones.map((zone) => {
    const stays = zone.plantings.filter((planting) => {
      const fate = fateOf(planting);
      return fate.kind === 'stays' || (fate.kind === 'moves' && fate.toZone === zone.id);
    });
    const comes = moved.filter(({ toZone, planting }) => toZone === zone.id && !zone.plantings.includes(planting));
    const plantings = [...stays, ...comes.map(({ planting }) => planting)].map((each) => plantingOf(each, move));
    return withRule({ ...zone, plantings });
  });
}

/** A rule that named a planting which is not there any more goes back to its default. */
function withRule(zone: PlanZone): PlanZone {
  const { rule, ...others } = zone;
  if (rule?.kind !== 'planting' || zone.plantings.some(({ id }) => id === rule.planting)) return zone;
  return others;
}

function plantingOf(planting: PlanPlanting, move: Move): PlanPlanting {
  const { inGround, establishing, ...kept } = planting;
  const ground = groundOf(planting, move);
  return {
    ...kept,
    need:
      planting.need.kind === 'crop'
        ? { ...planting.need, plantedOn: addDays(planting.need.plantedOn, move.days) }
        : planting.need,
    ...(ground && { inGround: ground }),
    ...(establishing && establishing.until >= move.firstDay && { establishing }),
    lines: linesOf(planting.lines, move),
  };
}

/** A crop is sown anew; what lasts is in the ground from the start, and goes when it went. */
function groundOf({ need, inGround }: PlanPlanting, { days }: Move): PlanPlanting['inGround'] {
  const from = need.kind === 'crop' ? inGround?.from : undefined;
  const { to } = inGround ?? {};
  if (from === undefined && to === undefined) return undefined;
  return {
    ...(from !== undefined && { from: addDays(from, days) }),
    ...(to !== undefined && { to: addDays(to, days) }),
  };
}

/** Those that lay last: until the season's end, or else until the last of them was taken up. */
function linesOf(lines: readonly PlanLine[], { before }: Move): readonly PlanLine[] {
  const endOf = ({ to }: PlanLine) => Math.min(before.last, to === undefined ? before.last : dayNumber(to));
  const last = Math.max(...lines.map(endOf));
  const isLaid = (line: PlanLine) =>
    endOf(line) === last && (line.from === undefined || dayNumber(line.from) <= before.last);
  return lines.filter(isLaid).map(({ from: _from, to: _to, ...line }) => line);
}

function supplyOf(supply: PlanSupply, { days, before }: Move): PlanSupply {
  const { cuts: _cuts, restrictions, ...kept } = supply;
  const known = supply.sources.filter(({ from }) => from === undefined || dayNumber(from) <= before.last);
  const last = known.toSorted((one, other) => (one.from ?? '').localeCompare(other.from ?? '')).at(-1);
  const later = supply.sources.filter((source) => !known.includes(source));
  const { from: _from, ...now } = last ?? {};
  return {
    ...kept,
    sources: [...(last === undefined ? [] : [now as PlanSupply['sources'][number]]), ...later],
    ...(restrictions && {
      restrictions: restrictions.map(({ from, to, ...each }) => ({
        ...each,
        ...(from !== undefined && { from: addDays(from, days) }),
        ...(to !== undefined && { to: addDays(to, days) }),
      })),
    }),
  };
}

function withAdded(plan: Plan, { zone: id, planting }: NewPlanting): Plan {
  const added = { ...planting, id: newPlantingId(plan, planting.name) } as PlanPlanting;
  const zones = plan.zones.map((zone) => (zone.id === id ? { ...zone, plantings: [...zone.plantings, added] } : zone));
  return { ...plan, zones };
}

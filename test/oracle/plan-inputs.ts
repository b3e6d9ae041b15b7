/**
 * What a plan's lines, sources and watering days come to in SI, reckoned from the document by itself: units by NIST SP 811, and the rules as
 * they are written down here. The oracle's seasons start from a garden; this tells whether that garden is the plan's.
 */
import type { Plan, PlanLine, PlanPlanting, PlanSupply, PlanZone, Weekday } from '../../src/plan/schema/plan-schema.ts';
import { yearMonthOf } from './calendar.ts';
import { maskOf } from './open-days.ts';
import { KPA_PER_METRE } from './pipe.ts';

const LITRES_PER_GALLON = 3.785411784;
const M_PER_FOOT = 0.3048;
const M_PER_INCH = 0.0254;
const KPA_PER_PSI = 6.894757293168361;

/** A figure as it was typed, in SI. */
interface Si {
  readonly lengthM: (typed: number) => number;
  readonly spacingM: (typed: number) => number;
  readonly heightM: (typed: number) => number;
  readonly boreMm: (typed: number) => number;
  readonly litres: (typed: number) => number;
  readonly kpa: (typed: number) => number;
}

function siOf({ units }: Plan): Si {
  const isUs = units === 'us';
  const times = (us: number, metric: number) => (typed: number) => typed * (isUs ? us : metric);
  return {
    lengthM: times(M_PER_FOOT, 1),
    spacingM: times(M_PER_INCH, 0.01),
    heightM: times(M_PER_FOOT, 1),
    boreMm: times(25.4, 1),
    litres: times(LITRES_PER_GALLON, 1),
    kpa: times(KPA_PER_PSI, 1),
  };
}

export interface LineInput {
  readonly emitters: number;
  readonly emitterFlowLph: number;
  readonly lengthM: number | undefined;
  readonly insideDiameterMm: number;
  readonly riseMPerM: number;
  /** Undefined where it is the zone's own, which the flows of its lines decide. */
  readonly efficiency: number | undefined;
}

/** Usual bores: dripline of 17 mm 0.56 in, solid tube 0.6 in (makers' usual sizes). */
const DRIPLINE_BORE_MM = 0.56 * 25.4;
const SOLID_BORE_MM = 0.6 * 25.4;

/** Lines of a planting in the document's order. */
export function lineInputs(plan: Plan, zone: PlanZone, planting: PlanPlanting): readonly LineInput[] {
  const si = siOf(plan);
  return planting.lines.map((line) => {
    const bore = line.insideDiameter;
    const usualBore = line.kind === 'solid' ? SOLID_BORE_MM : DRIPLINE_BORE_MM;
    return {
      ...emittersOf(line, planting, si),
      insideDiameterMm: bore === undefined ? usualBore : si.boreMm(bore),
      riseMPerM: (line.risePercent ?? 0) / 100,
      efficiency: efficiencyOf(line, zone),
    };
  });
}

/** A row that is a whole number of spacings long holds them all, to the digits that are typed: a ten-thousandth. */
const TO_TYPED_DIGITS = 1.0001;

function emittersOf(line: PlanLine, { extent }: PlanPlanting, si: Si) {
  const plants = extent.kind === 'canopy' ? extent.count : 1;
  if (line.kind === 'solid') {
    return { emitters: 0, emitterFlowLph: 0, lengthM: line.length === undefined ? undefined : si.lengthM(line.length) };
  }
  const emitterFlowLph = si.litres(line.flow);
  if (line.kind !== 'dripline') {
    // Point emitters are so many a plant, sprays so many in all.
    return { emitters: line.count * (line.kind === 'point' ? plants : 1), emitterFlowLph, lengthM: undefined };
  }
  const { layout } = line;
  const spacingM = si.spacingM(line.spacing);
  if (layout.kind === 'loops') {
    // Round the plant, or the bed as if it were one: the tube is cut to fit.
    const runs = plants * layout.perPlant;
    const acrossM = layout.diameter === undefined ? acrossOf(extent, si) : si.spacingM(layout.diameter);
    const roundM = Math.PI * acrossM;
    const perRun = Math.max(1, Math.round((TO_TYPED_DIGITS * roundM) / spacingM));
    return { emitters: runs * perRun, emitterFlowLph, lengthM: runs * roundM };
  }
  const rows = layout.kind === 'rows' ? layout.rows : 1;
  const lengthM = si.lengthM(layout.length);
  return {
    emitters: rows * Math.floor((TO_TYPED_DIGITS * lengthM) / spacingM),
    emitterFlowLph,
    lengthM: rows * lengthM,
  };
}

function acrossOf(extent: PlanPlanting['extent'], si: Si): number {
  if (extent.kind === 'canopy') return si.spacingM(extent.diameter);
  return 2 * Math.sqrt(groundM2(extent, si) / Math.PI);
}

/** Rows of vegetables stand 18 in apart where nothing else is said: common practice, no source. */
function groundM2(extent: Exclude<PlanPlanting['extent'], { kind: 'canopy' }>, si: Si): number {
  if (extent.kind === 'area') return si.lengthM(1) ** 2 * extent.area;
  if (extent.kind === 'bed') return si.lengthM(extent.length) * si.lengthM(extent.width);
  const apartM = extent.apart === undefined ? 18 * 0.0254 : si.spacingM(extent.apart);
  return extent.rows * si.lengthM(extent.length) * apartM;
}

/** California Code of Regulations, Title 23 (2015): 0.81 for drip, 0.75 for overspray; 0.4 + 0.6 DU (Irrigation Association 2014). */
function efficiencyOf(line: PlanLine, zone: PlanZone): number | undefined {
  const own = 'application' in line ? line.application : undefined;
  const said = own ?? zone.application;
  if (said?.kind === 'efficiency') return said.value;
  if (said?.kind === 'distribution-uniformity') return 0.4 + 0.6 * said.value;
  if (said?.kind === 'computed') return undefined;
  return line.kind === 'spray' ? 0.75 : 0.81;
}

export interface SourceInput {
  readonly flowLpm: number | undefined;
  readonly pressureKpa: number | undefined;
}

/** What an open bucket shows is not flow to plan on: 80 % of it, unless said otherwise (common practice, no source). */
export function sourceInput(plan: Plan, { flow, pressure, waterHeight }: PlanSupply['sources'][number]): SourceInput {
  const si = siOf(plan);
  const barrelKpa = waterHeight === undefined ? undefined : si.heightM(waterHeight) * KPA_PER_METRE;
  return {
    flowLpm:
      flow &&
      (flow.kind === 'typed'
        ? si.litres(flow.flow)
        : bucketLpm(si.litres(flow.volume), flow.seconds, flow.share ?? 0.8)),
    pressureKpa: pressure === undefined ? barrelKpa : si.kpa(pressure),
  };
}

function bucketLpm(litres: number, seconds: number, share: number): number {
  return (share * litres * 60) / seconds;
}

const WEEKDAYS: readonly Weekday[] = ['sun', 'mon', 'tue', 'wed', 'thu', 'fri', 'sat'];
const OFFSETS = [0, 1, 2, 3, 4, 5, 6];

/** The zone's watering days of each week, bit 0 = the week's first day; a week belongs to the month of its fourth day. */
export function weekMasks({ season, supply }: Plan, zone: PlanZone): readonly number[] {
  return Array.from({ length: season.weeks }, (_, week) => {
    const dates = OFFSETS.map((offset) => Date.parse(season.firstDay) / 86_400_000 + 7 * week + offset);
    const month = yearMonthOf(dates[3] ?? Number.NaN).month + 1;
    return weekMask(zone.wateringDaysByMonth?.[String(month)] ?? zone.wateringDays, dates, supply);
  });
}

function weekMask(wanted: PlanZone['wateringDays'], dates: readonly number[], supply: PlanSupply | undefined): number {
  const window = supply?.window?.weekdays ?? WEEKDAYS;
  const inWindow = maskWhere(dates, (date) => window.includes(weekdayOf(date)));
  const restricted = maskWhere(dates, (date) => {
    const inForce = (supply?.restrictions ?? []).filter(({ from, to }) => {
      const day = new Date(date * 86_400_000).toISOString().slice(0, 10);
      return (from === undefined || from <= day) && (to === undefined || day <= to);
    });
    return inForce.every(({ weekdays }) => weekdays.includes(weekdayOf(date)));
  });
  if (typeof wanted === 'number') return maskOf(inWindow & restricted, wanted);
  const named = maskWhere(dates, (date) => wanted.includes(weekdayOf(date)));
  // Where the window takes all of them it is overlooked; a restriction never is.
  return ((named & inWindow) === 0 ? named : named & inWindow) & restricted;
}

function weekdayOf(date: number): Weekday {
  return WEEKDAYS[new Date(date * 86_400_000).getUTCDay()] as Weekday;
}

function maskWhere(dates: readonly number[], holds: (date: number) => boolean): number {
  return dates.reduce((mask, date, offset) => mask | (holds(date) ? 1 << offset : 0), 0);
}

/** What the figures of each kind of notice must be, from the season alone, by another way than the notices take. */

import { plantingFigure, plantingState } from '../../../src/engine/season/planting-week.ts';
import type { PlantingSeason, Season, ZoneSeason } from '../../../src/engine/season/season.ts';
import { heldMask } from '../../../src/engine/season/week-masks.ts';
import { zoneFigure } from '../../../src/engine/season/zone-week.ts';
import { seasonSupply } from '../../../src/engine/supply/season-supply.ts';
import { type Notice, type NoticeKind, plantingsOf } from '../../../src/explain/notices/notice.ts';
import { wateringTimes } from '../../../src/explain/watering-times.ts';
import { restOn } from '../../oracle/crop.ts';
import { daysFrom } from '../../oracle/watering-days.ts';
import { figuresOf } from '../../support/notices.ts';

/** A notice with what it is about, looked up in the season. */
export interface Told {
  readonly season: Season;
  readonly notice: Notice;
  readonly weeks: readonly number[];
  readonly zone: ZoneSeason | undefined;
  readonly own: PlantingSeason | undefined;
  /** The plantings that it names. */
  readonly all: readonly PlantingSeason[];
}

export function told(season: Season, notice: Notice): Told {
  const zone = season.zones.find((candidate) => candidate.zone.id === notice.zoneId);
  const own = zone?.plantings.find(({ planting }) => planting.id === notice.plantingId);
  const ids = plantingsOf(notice);
  const all = zone?.plantings.filter(({ planting }) => ids.includes(planting.id)) ?? [];
  return { season, notice, weeks: notice.weeks ?? [], zone, own, all };
}

type Figures = Readonly<Record<string, number>>;

const sum = (values: ArrayLike<number>) => Array.from(values).reduce((total, value) => total + value, 0);

type Field = Parameters<typeof plantingFigure>[1];

/** A planting of several need not be concerned in all weeks: then the sums are a share of those over all. */
function lack({ all, own, weeks, notice }: Told): Figures {
  const total = (field: Field, areaOf = (_: PlantingSeason) => 1) =>
    sum(all.flatMap((each) => weeks.map((week) => areaOf(each) * plantingFigure(each, field, week))));
  const area = (each: PlantingSeason) => each.planting.areaM2;
  if (own === undefined) {
    const { unmetLitres = Number.NaN, demandLitres = Number.NaN } = figuresOf(notice);
    return {
      unmetLitres: Math.min(unmetLitres, total('demandLitres') - total('usedLitres') + 1e-9),
      demandLitres: Math.min(demandLitres, total('demandLitres') + 1e-9),
    };
  }
  return {
    unmetLitres: total('demandLitres') - total('usedLitres'),
    demandLitres: total('demandLitres'),
    neededLitres: total('neededMm', area),
    netLitres: total('irrigationNetMm', area),
    shortDays: total('shortDays'),
    dryWeeks: weeks.filter((week) => plantingState(own, week) === 'dry').length,
  };
}

function over({ all, own, weeks, notice }: Told): Figures {
  const { drainedLitres = Number.NaN, appliedLitres = Number.NaN } = figuresOf(notice);
  const seasonLitres = sum(
    all.flatMap((each) => Array.from({ length: each.weeks }, (_, week) => plantingFigure(each, 'litres', week))),
  );
  const shares = { seasonLitres, drainedShare: drainedLitres / appliedLitres };
  if (own === undefined) return shares;
  const total = (field: Field) => sum(weeks.map((week) => plantingFigure(own, field, week)));
  return {
    ...shares,
    drainedLitres: sum(weeks.map((week) => wastedMm(own, week))) * own.planting.areaM2,
    appliedLitres: total('litres'),
  };
}

/** Of what drained, less what washes salt away, no more than it had not asked for. */
function wastedMm(own: PlantingSeason, week: number): number {
  const leachedMm = own.demand.leachingFraction * plantingFigure(own, 'irrigationNetMm', week);
  const drainedMm = plantingFigure(own, 'irrigationDrainedMm', week) - leachedMm;
  return Math.max(0, Math.min(drainedMm, plantingFigure(own, 'unaskedMm', week)));
}

/** Of a zone in the weeks of its notice. */
function inZone({ zone, weeks }: Told, field: Parameters<typeof zoneFigure>[1]): readonly number[] {
  return weeks.map((week) => zoneFigure(zone as ZoneSeason, field, week));
}

function lineOf({ own, notice }: Told) {
  const line = own?.planting.lines[notice.lineIndex ?? -1];
  if (line === undefined) throw new Error(`${notice.kind} names no line that is there`);
  return line;
}

const ones = (mask: number) => mask.toString(2).replaceAll('0', '').length;

/** Hours in which water may run on a day, by the window and by every restriction in force. */
function hoursOn({ span, supply }: Season['garden'], day: number): number {
  const date = span.firstDay + day;
  const weekday = (((date + 3) % 7) + 7) % 7;
  const holding = (supply.restrictions ?? []).filter(({ from = date, to = date }) => from <= date && date <= to);
  const masks = [supply.windowWeekdays, ...holding.map(({ weekdays }) => weekdays)];
  if (masks.some((mask) => ((mask >> weekday) & 1) === 0)) return 0;
  return Math.min(24, supply.windowHoursPerDay, ...holding.flatMap(({ hoursPerDay = 24 }) => hoursPerDay));
}

/** The day of the weeks on which a measure is greatest. */
function worstDay({ weeks }: Told, measure: (day: number) => number): number {
  const days = weeks.flatMap((week) => [0, 1, 2, 3, 4, 5, 6].map((offset) => 7 * week + offset));
  return days.reduce((worst, day) => (measure(day) > measure(worst) ? day : worst), days[0] ?? -1);
}

function pressure(of: Told): Figures {
  const { season, notice } = of;
  const line = lineOf(of);
  const known = season.garden.supply.sources.flatMap(({ pressureKpa }) => pressureKpa ?? []);
  const { inletPressureKpa = -1, longestRunM = -1, runs = 0 } = figuresOf(notice);
  const isLow = notice.kind === 'pressure-low';
  return {
    inletPressureKpa: known.find((kpa) => kpa === inletPressureKpa) ?? 20 * 6.894757293168361,
    neededPressureKpa: line.compensating ? line.leastPressureKpa : 0,
    longestRunM: isLow ? 0 : Math.max(1e-3, longestRunM),
    runs: line.runs ?? 1,
    ...(line.lengthM === undefined ? {} : { runLengthM: line.lengthM / runs }),
  };
}

function allowance({ season, notice, weeks }: Told): Figures {
  const { meteredL } = seasonSupply(season);
  const { allowanceLitresPerWeek = 0, allowanceLitresPerSeason = 0 } = season.garden.supply;
  if (figuresOf(notice)['weekAllowanceLitres'] !== undefined) {
    const used = weeks.map((week) => meteredL[week] as number);
    return { usedLitres: Math.max(...used), overLitres: sum(used.map((litres) => litres - allowanceLitresPerWeek)) };
  }
  return { usedLitres: sum(meteredL), overLitres: sum(meteredL) - allowanceLitresPerSeason };
}

/** Days from the first in the ground, or of the season, to the day before planting, or the last in the ground. */
function cropEarly({ season, own }: Told): Figures {
  const { coefficient, from, to } = (own as PlantingSeason).planting;
  if (coefficient.kind === 'landscape') throw new Error('crop-early is told of a crop');
  const { firstDay, weeks } = season.garden.span;
  const last = Math.min(to, firstDay + 7 * weeks - 1, coefficient.plantedOn - 1);
  return { daysEarly: last - Math.max(from, firstDay) + 1 };
}

/** An annual's days are those after its last stage; one that stays has at least one in each week, and no more than stand there. */
function cropPast({ season, own, weeks, notice }: Told): Figures {
  const { planting } = own as PlantingSeason;
  const { coefficient, from, to } = planting;
  if (coefficient.kind === 'landscape') throw new Error('crop-past is told of a crop');
  if (coefficient.perennial === true) {
    const days = sum(weeks.map((week) => plantingFigure(own as PlantingSeason, 'groundDays', week)));
    return { daysPast: Math.min(days, Math.max(weeks.length, figuresOf(notice)['daysPast'] ?? Number.NaN)) };
  }
  const { firstDay, weeks: all } = season.garden.span;
  const first = Math.max(from, firstDay, coefficient.plantedOn + sum(coefficient.stageDays));
  const past = daysFrom(first, Math.min(to, firstDay + 7 * all - 1));
  return { daysPast: past.filter((day) => restOn(planting, day) === undefined).length };
}

/** The figures that must be found, each under its name; a notice may have more. */
export const FIGURES: Readonly<Record<NoticeKind, (of: Told) => Figures>> = {
  'no-line': lack,
  closed: lack,
  'short-by-hand': lack,
  'cut-short': lack,
  'cut-not-met': ({ season, weeks }) => {
    const untaken = weeks.map((week) => season.cuts?.untakenLitres[week] ?? Number.NaN);
    return { untakenLitres: sum(untaken), worstWeekLitres: Math.max(...untaken) };
  },
  restricted: lack,
  'short-as-run': lack,
  'beyond-timer': (of) => ({
    ...lack(of),
    minutesAsked: Math.max(...inZone(of, 'minutesWanted')),
    startsADay: of.zone?.zone.startsADay ?? Number.NaN,
  }),
  'shut-off-short': lack,
  'left-behind': lack,
  'few-days': (of) => {
    const { wateringDays = 0, wateringDaysByWeek } = of.zone?.zone ?? {};
    const counts = of.weeks.map((week) => ones(wateringDaysByWeek?.[week] ?? wateringDays));
    return { ...lack(of), fewestDays: Math.min(...counts), mostDays: Math.max(...counts) };
  },
  'dry-spell': lack,
  short: lack,
  over,
  'over-by-hand': over,
  'step-too-long': ({ zone }) => ({
    timerStepMinutes: zone?.zone.timerStepMinutes ?? Number.NaN,
    longestCycleMinutes: zone?.zone.longestCycleMinutes ?? Number.NaN,
  }),
  'hand-set': (of) => ({ minutes: sum(inZone(of, 'minutes')) }),
  'too-long': (of) => {
    const minutesOn = (day: number) =>
      zoneFigure(of.zone as ZoneSeason, `minutesDay${day % 7}` as 'minutesDay0', Math.floor(day / 7));
    const windowOn = (day: number) => 60 * hoursOn(of.season.garden, day);
    const worst = worstDay(of, (day) => (windowOn(day) > 0 ? minutesOn(day) / windowOn(day) : 0));
    return { minutesPerDay: minutesOn(worst), windowMinutes: windowOn(worst) };
  },
  'crop-early': cropEarly,
  'crop-past': cropPast,
  'out-of-season': ({ own, season }) => {
    const { firstDay, weeks } = season.garden.span;
    const { from = firstDay, to = firstDay } = own?.planting ?? {};
    return { daysBefore: Math.max(0, firstDay - to), daysAfter: Math.max(0, from - firstDay - 7 * weeks + 1) };
  },
  'pot-dries-out': ({ own, zone, weeks }) => {
    const { planting, demand } = own as PlantingSeason;
    const litres = (mm: number) => (mm * planting.areaM2) / (planting.container?.count ?? Number.NaN);
    const grows = (day: number) => day >= demand.first && day < demand.end && !demand.rest?.[day];
    const etcMm = (day: number) => demand.expectedEtcMm[day] ?? Number.NaN;
    // After the last run of each watering day, to the next run: that day's last part and the whole days between.
    const waits = weeks.flatMap((week) => {
      const mask = heldMask((zone as ZoneSeason).zone, week);
      const days = [0, 1, 2, 3, 4, 5, 6].filter((day) => (mask >> day) & 1);
      const runsADay = zoneFigure(zone as ZoneSeason, 'runsADay', week);
      return days
        .filter((day) => grows(7 * week + day))
        .map((day) => {
          const next = days[days.indexOf(day) + 1] ?? (days[0] ?? 0) + 7;
          let usedMm = etcMm(7 * week + day) / runsADay;
          for (let between = day + 1; between < next && grows(7 * week + between); between++)
            usedMm += etcMm(7 * week + between);
          return { usedMm, heldMm: demand.expectedRawMm[7 * week + day] ?? Number.NaN, runsADay };
        });
    });
    const worst = waits.reduce((most, wait) => (wait.usedMm - wait.heldMm > most.usedMm - most.heldMm ? wait : most));
    return { heldLitres: litres(worst.heldMm), usedLitres: litres(worst.usedMm), runsADay: worst.runsADay };
  },
  'wetted-too-little': ({ own }) => ({ wettedShare: own?.planting.wettedShare ?? Number.NaN }),
  'line-too-long': pressure,
  'pressure-low': pressure,
  'flow-below-label': ({ own, weeks, season, notice }) => {
    const { planting } = own as PlantingSeason;
    const days = weeks.flatMap((week) =>
      [0, 1, 2, 3, 4, 5, 6].map((at) => season.garden.span.firstDay + 7 * week + at),
    );
    const laid = days
      .filter((day) => day >= planting.from && day <= planting.to)
      .flatMap((day) => {
        const lying = planting.lines.filter(({ from, to = Number.POSITIVE_INFINITY }) => from <= day && day <= to);
        const flow = planting.flows.find(({ from, to }) => from <= day && day <= to);
        return flow === undefined ? [] : [{ flow, labelLph: sum(lying.map(({ flowLph }) => flowLph)) }];
      });
    const least = Math.min(...laid.map(({ flow, labelLph }) => flow.flowLph / labelLph));
    return { flowLph: least * (figuresOf(notice)['labelLph'] ?? Number.NaN) };
  },
  'flow-too-fast': (of) => {
    const { insideDiameterMm } = lineOf(of);
    const { flowLph = Number.NaN } = figuresOf(of.notice);
    // In the handbooks' units: ft/s of gpm and inches; a US gallon is 231 cubic inches.
    const gallonsAMinute = flowLph / 60 / 3.785_411_784;
    const feetASecond = (231 * gallonsAMinute) / (12 * 60 * (Math.PI / 4) * (insideDiameterMm / 25.4) ** 2);
    return { velocityMs: feetASecond * 0.3048, limitMs: 5 * 0.3048 };
  },
  'flow-too-great': (of) => {
    const { flows, sources } = seasonSupply(of.season);
    const flow = flows[of.season.zones.indexOf(of.zone as ZoneSeason)] as Float64Array;
    const excess = (day: number) => (flow[day] as number) - (sources.flowLpm[day] as number) || 0;
    const day = worstDay(of, excess);
    return { flowLpm: flow[day] as number, sourceLpm: sources.flowLpm[day] as number, excessLpm: excess(day) };
  },
  'flow-together': (of) => {
    const { flows, sources } = seasonSupply(of.season);
    const sourceLpm = (day: number) => sources.flowLpm[day] as number;
    const together = (day: number) =>
      sum(flows.map((flow) => flow[day] as number).filter((lpm) => lpm <= sourceLpm(day) * (1 + 1e-9)));
    const excess = (day: number) => (together(day) > sourceLpm(day) * (1 + 1e-9) ? together(day) : 0);
    const day = worstDay(of, excess);
    return { flowLpm: together(day), sourceLpm: sourceLpm(day), groups: of.notice.groups?.length ?? Number.NaN };
  },
  'window-too-short': (of) => {
    const { minutesNeeded = 0, windowMinutes = 0 } = figuresOf(of.notice);
    const times = wateringTimes(of.season);
    const day = [...times.minutesNeeded.keys()].find(
      (index) => times.minutesNeeded[index] === minutesNeeded && times.windowMinutes[index] === windowMinutes,
    );
    return {
      minutesOver: minutesNeeded - windowMinutes + (day === undefined ? Number.NaN : 0),
      minutesInAll: sum(times.minutesNeeded),
    };
  },
  'allowance-exceeded': allowance,
  'tank-dry': ({ season }) => {
    const { tank } = seasonSupply(season);
    return {
      mainsLitres: sum(tank?.besidesL ?? []),
      overflowLitres: sum(tank?.overflowL ?? []),
      firstDryDay: [...(tank?.besidesL ?? [])].findIndex((litres) => litres > 0),
    };
  },
  'emitters-far-apart': (of) => ({ spacingM: lineOf(of).spacingM ?? Number.NaN }),
  'line-downhill': ({ zone }) => ({ slopePercent: zone?.zone.soil.slopePercent ?? Number.NaN }),
  'no-climate': ({ season, weeks }) => ({
    etoMonths: (season.garden.site.climate.etoMm ?? []).filter((mm) => mm !== 0).length,
    temperatureMonths: [...Array(12).keys()].filter((month) => {
      const { etoMm, minTemperatureC, maxTemperatureC } = season.garden.site.climate;
      return etoMm === undefined && !(minTemperatureC?.[month] === 0 && maxTemperatureC?.[month] === 0);
    }).length,
    days: 7 * weeks.length,
    otherDays: 7 * (season.garden.span.weeks - weeks.length),
  }),
};

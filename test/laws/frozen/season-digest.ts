/**
 * A season in few numbers that pin all of its figures: of each field a sum in which every place has its own weight, so that figures
 * that swap places or make up for one another are seen too, and a hash of what has to be the same to the last digit.
 */
import { createHash } from 'node:crypto';
import { compareZone } from '../../../src/engine/mix/compare-zone.ts';
import { PLANTING_FIELDS, type Season, ZONE_FIELDS, type ZoneSeason } from '../../../src/engine/season/season.ts';
import { seasonSupply } from '../../../src/engine/supply/season-supply.ts';
import type { Notice } from '../../../src/explain/notices/notice.ts';
import { noticesOf } from '../../../src/explain/notices/notices-of.ts';

/** A weighted sum, and the sum of its parts without their signs: the scale on which two of them are alike. */
export interface Pin {
  readonly sum: number;
  readonly scale: number;
}

/** Pins by name, of one season or one zone. */
export type Pins = ReadonlyMap<string, Pin>;

export interface SeasonDigest {
  /** Of minutes, cycles, watering days, states, and of which notice is told of which weeks. */
  readonly exact: string;
  readonly pins: Pins;
}

/** Fields of a zone's and of a planting's week that count or name something. */
const EXACT_ZONE_FIELDS = ['minutes', 'minutesPerDay', 'cycles', 'state', 'origin'] as const;
const EXACT_PLANTING_FIELDS = ['openDays', 'openMask', 'shortDays', 'groundDays', 'state'] as const;

/** The other fields, whose digits may differ by rounding. */
const MEASURED_ZONE_FIELDS = [
  ...['litres', 'rainLitres', 'demandLitres', 'usedLitres', 'rainStayedLitres', 'irrigationStayedLitres'],
  ...['drainedLitres', 'lostLitres', 'storageLitres', 'neededLitres'],
  ...['rainCreditMm', 'rainCreditLitres', 'rainCreditMinutes', 'flowLpm', 'minutesWanted'],
] as readonly (keyof typeof ZONE_FIELDS)[];
const MEASURED_PLANTING_FIELDS = [
  ...['demandMm', 'usedMm', 'rainMm', 'rainSoakedMm', 'rainDrainedMm', 'irrigationNetMm', 'irrigationGrossMm'],
  ...['irrigationDrainedMm', 'depletionStartMm', 'depletionEndMm', 'neededMm', 'minutesWanted', 'flowLpm'],
] as readonly (keyof typeof PLANTING_FIELDS)[];

/** Digits to which minutes and the like are compared: all but the last few bits of a sum. */
const EXACT_DIGITS = 12;

/** The whole season, all zones together. */
export function seasonDigest(season: Season): SeasonDigest {
  const notices = noticesOf(season);
  return {
    exact: exactHash(season, notices),
    pins: new Map([
      ...zonePins(season.zones),
      ...weatherPins(season),
      ...supplyPins(season),
      ...mixPins(season),
      ...noticePins(notices),
    ]),
  };
}

/** The figures of some zones and their plantings, by field. */
export function zonePins(zones: readonly ZoneSeason[]): Pins {
  const zoneBlock = (field: number) =>
    zones.flatMap(({ figures, weeks }) => [...figures.subarray(field * weeks, (field + 1) * weeks)]);
  const plantingBlock = (field: number) =>
    zones.flatMap(({ plantings }) =>
      plantings.flatMap(({ figures, weeks }) => [...figures.subarray(field * weeks, (field + 1) * weeks)]),
    );
  return new Map([
    ...MEASURED_ZONE_FIELDS.map((name) => [`zone ${name}`, pinOf(zoneBlock(ZONE_FIELDS[name]))] as const),
    ...MEASURED_PLANTING_FIELDS.map(
      (name) => [`planting ${name}`, pinOf(plantingBlock(PLANTING_FIELDS[name]))] as const,
    ),
  ]);
}

function weatherPins({ weather }: Season): Pins {
  return new Map([
    ['weather eto', pinOf(weather.eto.mm)],
    ['weather rain', pinOf(weather.rain.mm)],
  ]);
}

function supplyPins(season: Season): Pins {
  const { drawL, meteredL, times, tank } = seasonSupply(season);
  const daily = (values: ArrayLike<number> | undefined) => pinOf(values ?? []);
  return new Map([
    ['supply drawL', daily(drawL)],
    ['supply meteredL', daily(meteredL)],
    ['supply minutesNeeded', daily(times.minutesNeeded)],
    ['supply levelL', daily(tank?.levelL)],
    ['supply shortL', daily(tank?.shortL)],
  ]);
}

/** What every planting needed by itself, against what it got. */
function mixPins(season: Season): Pins {
  const compared = season.zones.flatMap(({ zone }) => compareZone(season, zone.id).plantings);
  return new Map([
    ['mix neededMm', pinOf(compared.flatMap(({ neededMm }) => [...neededMm]))],
    ['mix rateMmPerHour', pinOf(compared.map(({ rateMmPerHour }) => rateMmPerHour))],
  ]);
}

/** By kind and figure, over all notices of the kind. */
function noticePins(notices: readonly Notice[]): Pins {
  const byName = new Map<string, number[]>();
  for (const { kind, figures } of notices) {
    for (const [name, value] of Object.entries(figures)) {
      const key = `${kind} ${name}`;
      byName.set(key, [...(byName.get(key) ?? []), value]);
    }
  }
  return new Map([...byName].map(([name, values]) => [name, pinOf(values)]));
}

/** Weights go from 1 to 2 and never come back: the parts of the golden ratio's multiples. */
export function pinOf(values: ArrayLike<number>): Pin {
  let [sum, scale] = [0, 0];
  for (let index = 0; index < values.length; index += 1) {
    const part = (1 + ((index * 0.6180339887498949) % 1)) * (values[index] as number);
    sum += part;
    scale += Math.abs(part);
  }
  return { sum, scale };
}

function exactHash({ zones }: Season, notices: readonly Notice[]): string {
  const weekly = (figures: Float64Array, weeks: number, fields: readonly number[]) =>
    fields.map((field) => [...figures.subarray(field * weeks, (field + 1) * weeks)].map(rounded));
  const zoneFields = EXACT_ZONE_FIELDS.map((name) => ZONE_FIELDS[name]);
  const plantingFields = EXACT_PLANTING_FIELDS.map((name) => PLANTING_FIELDS[name]);
  const exact = {
    zones: zones.map(({ figures, weeks }) => weekly(figures, weeks, zoneFields)),
    plantings: zones.flatMap(({ plantings }) =>
      plantings.map(({ figures, weeks }) => weekly(figures, weeks, plantingFields)),
    ),
    notices: notices.map(({ kind, zoneId, plantingId, lineIndex, weeks, groups }) => [
      ...[kind, zoneId ?? '', plantingId ?? '', lineIndex ?? -1],
      ...[weeks ?? [], groups ?? []],
    ]),
  };
  return createHash('sha256').update(JSON.stringify(exact)).digest('base64').slice(0, 12);
}

function rounded(value: number): number {
  return Number(value.toPrecision(EXACT_DIGITS));
}

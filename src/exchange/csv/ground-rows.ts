/** Rows of a season's table that tell of a planting's ground or pots, and of its roots: none adds up over the weeks. */
import { rootDepthOnM, runDepths } from '../../engine/ground/run-depths.ts';
import { emitterWidthsM } from '../../engine/line/wetted-share.ts';
import type { PlantingSeason, ZoneSeason } from '../../engine/season/season.ts';
import { shareIn } from '../../engine/season/wetted-week.ts';
import { fromSi, type Quantity, unitOf } from '../../engine/units.ts';
import { restOfWeek } from '../../explain/trace/week-rest.ts';
import { csvWords } from '../../language/en/csv.ts';
import { formatFor } from '../../language/format/format.ts';
import { symbolOf } from '../../language/format/quantity.ts';
import { plainRow, type Row, round, textRow, type Written } from './season-rows.ts';

/** Of each planting by its id, of each week from 0, how deep the run that wets deepest wets its ground, m. */
export type WettedDepths = ReadonlyMap<string, readonly (number | undefined)[]>;

export function wettedDepths(zone: ZoneSeason, { season, weeks }: Written): WettedDepths {
  const depths = new Map<string, number[]>();
  for (const week of weeks) {
    for (const { plantingId, depthM } of runDepths(season, zone, week)) {
      const own = depths.get(plantingId) ?? [];
      own[week] = Math.max(own[week] ?? 0, depthM);
      depths.set(plantingId, own);
    }
  }
  return depths;
}

/** Those that have something to say in some week. */
export function groundRows(
  zone: ZoneSeason,
  member: PlantingSeason,
  depths: WettedDepths,
  written: Written,
): readonly Row[] {
  const { season, reader, weeks } = written;
  const { planting, demand } = member;
  const { container, mulch } = planting;
  const { more, mulches, rests } = csvWords(reader.language);
  const names = [zone.zone.name, planting.name];
  const lastDay = (week: number) => Math.min(7 * week + 7, demand.end) - 1;
  const isThere = (week: number) => lastDay(week) >= Math.max(7 * week, demand.first);
  const figure = (name: string, quantity: Quantity | undefined, of: (week: number) => number | undefined): Row => {
    const unit = quantity === undefined ? '' : symbolOf(unitOf(quantity, reader.units).name, reader.language);
    const inUnit = (week: number) => {
      const value = isThere(week) ? of(week) : undefined;
      if (value === undefined) return '';
      return round(quantity === undefined ? value : fromSi(value, quantity, reader.units));
    };
    return plainRow([...names, name, unit], inUnit, written);
  };
  const text = (name: string, of: (week: number) => string) =>
    textRow([...names, name], (week) => (isThere(week) ? of(week) : ''), written);
  const covering =
    mulch?.kind === 'organic' ? mulches.organic(formatFor(reader), mulch.cover) : mulch && mulches.plastic;
  const restOf = (week: number) => restOfWeek(season, member, week);
  const shareOf = (week: number) => shareIn(planting, week);
  const widthM = Math.max(0, ...emitterWidthsM(planting, zone.zone.soil.texture));
  return [
    ...(covering === undefined ? [] : [text(more.mulch, () => covering)]),
    ...(container === undefined
      ? [
          ...(weeks.every((week) => shareOf(week) === 1) ? [] : [figure(more.wettedShare, undefined, shareOf)]),
          ...(widthM === 0 ? [] : [figure(more.wettedWidth, 'length', () => widthM)]),
          figure(more.rootDepth, 'rootDepth', (week) => rootDepthOnM(zone, member, lastDay(week))),
          figure(more.wettedDepth, 'rootDepth', (week) => depths.get(planting.id)?.[week]),
        ]
      : [figure(more.potVolume, 'volume', () => container.volumeLitres)]),
    ...(demand.leachingFraction === 0 ? [] : [figure(more.leaching, undefined, () => demand.leachingFraction)]),
    ...(weeks.some((week) => restOf(week) !== undefined)
      ? [
          text(more.rest, (week) => {
            const kind = restOf(week);
            return kind === undefined ? '' : rests[kind];
          }),
        ]
      : []),
  ];
}

/** What the season comes to so far, in a line and a line below it, by the step that somebody is at. */
import { plantingFigure } from '../../engine/season/planting-week.ts';
import { toSi } from '../../engine/units.ts';
import { startKnownWords } from '../../language/en/start-known.ts';
import { seasonDays } from '../../plan/season-weeks.ts';
import { USUAL_EMITTER } from '../../plan/usual-lines.ts';
import { hasWeather, sumOf, weatherByWeek } from './known-weather.ts';
import type { StartContext } from './start-context.ts';
import type { StartStep } from './start-steps.ts';

export interface Finding {
  readonly title: string;
  readonly says: string;
}

export function findingOf(step: StartStep, context: StartContext): Finding {
  return FINDINGS[step](context) ?? weatherFinding(context);
}

const FINDINGS: Readonly<Record<StartStep, (context: StartContext) => Finding | undefined>> = {
  where: weatherFinding,
  water: waterFinding,
  timer: timerFinding,
  plants: needFinding,
  lines: needFinding,
};

function weatherFinding({ plan, season, reader, format }: StartContext): Finding {
  const say = startKnownWords(reader.language);
  if (!hasWeather(season)) {
    const hasPlace = plan.site.place !== undefined;
    return hasPlace ? { title: say.weatherMissing, says: say.placeKnown } : { title: say.none, says: say.noWeather };
  }
  const weeks = weatherByWeek(season);
  const [etoMm, rainMm] = [sumOf(weeks.map((week) => week.etoMm)), sumOf(weeks.map((week) => week.rainMm))];
  const { first, last } = seasonDays(plan.season);
  return { title: say.weather(format, etoMm, rainMm), says: say.span(format, first, last, plan.season.weeks) };
}

/** Of the first source. */
const flowLpmOf = ({ season }: StartContext): number | undefined => season.garden.supply.sources[0]?.flowLpm;

function waterFinding(context: StartContext): Finding | undefined {
  const { plan, reader, format } = context;
  const say = startKnownWords(reader.language);
  const flowLpm = flowLpmOf(context);
  if (flowLpm === undefined) return undefined;
  const emitterLph = toSi(USUAL_EMITTER[plan.units], 'emitterFlow', plan.units);
  return {
    title: say.feeds(format, flowLpm, Math.floor((60 * flowLpm) / emitterLph)),
    says: say.emitters(format, emitterLph),
  };
}

function timerFinding(context: StartContext): Finding | undefined {
  const { season, reader, format } = context;
  const say = startKnownWords(reader.language);
  const flowLpm = flowLpmOf(context);
  if (flowLpm === undefined) return undefined;
  const { windowHoursPerDay } = season.garden.supply;
  return { title: say.day(format, windowHoursPerDay, 60 * windowHoursPerDay * flowLpm), says: say.at(format, flowLpm) };
}

/** The week in which the plants use most. */
function needFinding({ season, reader, format }: StartContext): Finding | undefined {
  const say = startKnownWords(reader.language);
  const { firstDay, weeks } = season.garden.span;
  const plantings = season.zones.flatMap((zone) => zone.plantings);
  const litres = Array.from({ length: weeks }, (_, week) =>
    sumOf(plantings.map((each) => plantingFigure(each, 'demandMm', week) * each.planting.areaM2)),
  );
  const most = Math.max(0, ...litres);
  if (most === 0) return undefined;
  return {
    title: say.use(format, plantings.length, most),
    says: say.most(format, firstDay + 7 * litres.indexOf(most)),
  };
}

/** What finds the notices of each kind, and what they hang on. */
import type { Season, ZoneSeason } from '../../engine/season/season.ts';
import { allowanceExceeded } from './kinds/allowance-exceeded.ts';
import { cropEarly } from './kinds/crop-early.ts';
import { cropPast } from './kinds/crop-past.ts';
import { cutNotMet } from './kinds/cut-not-met.ts';
import { emittersFarApart } from './kinds/emitters-far-apart.ts';
import { flowBelowLabel } from './kinds/flow-below-label.ts';
import { flowTogether } from './kinds/flow-together.ts';
import { flowTooFast } from './kinds/flow-too-fast.ts';
import { flowTooGreat } from './kinds/flow-too-great.ts';
import { handSet } from './kinds/hand-set.ts';
import { lineDownhill } from './kinds/line-downhill.ts';
import { linePressure } from './kinds/line-pressure.ts';
import { noClimate } from './kinds/no-climate.ts';
import { outOfSeason } from './kinds/out-of-season.ts';
import { over } from './kinds/over.ts';
import { potDriesOut } from './kinds/pot-dries-out.ts';
import { shortOfWater } from './kinds/short-of-water.ts';
import { stepTooLong } from './kinds/step-too-long.ts';
import { tankDry } from './kinds/tank-dry.ts';
import { tooLong } from './kinds/too-long.ts';
import { wettedTooLittle } from './kinds/wetted-too-little.ts';
import { windowTooShort } from './kinds/window-too-short.ts';
import { inGarden, inZones, ofGround, ofSeason } from './notice-finder.ts';

const onNothing = () => [];
const onWeather = ({ weather }: Season) => [weather];
const onSupply = ({ garden: { supply, span } }: Season) => [supply, span.firstDay];
const onSpan = ({ garden: { span } }: Season, { zone }: ZoneSeason) => [zone.id, span.firstDay, span.weeks];
const onLines = (season: Season, zone: ZoneSeason) => [...onSpan(season, zone), season.garden.supply, zone.zone.soil];

export const FINDERS = {
  noClimate: inGarden(noClimate),
  shortOfWater: inZones({ find: shortOfWater, keptBy: ofSeason, hangsOn: onWeather }),
  tooLong: inZones({ find: tooLong, keptBy: ofSeason, hangsOn: onSupply }),
  cutNotMet: inGarden(cutNotMet),
  cropEarly: inZones({ find: cropEarly, keptBy: ofGround, hangsOn: onSpan }),
  cropPast: inZones({ find: cropPast, keptBy: ofGround, hangsOn: onSpan }),
  outOfSeason: inZones({ find: outOfSeason, keptBy: ofGround, hangsOn: onSpan }),
  over: inZones({ find: over, keptBy: ofSeason, hangsOn: onNothing }),
  stepTooLong: inZones({ find: stepTooLong, keptBy: ofSeason, hangsOn: onNothing }),
  handSet: inZones({ find: handSet, keptBy: ofSeason, hangsOn: onWeather }),
  linePressure: inZones({ find: linePressure, keptBy: ofGround, hangsOn: onLines }),
  flowBelowLabel: inZones({ find: flowBelowLabel, keptBy: ofGround, hangsOn: onLines }),
  flowTooFast: inZones({ find: flowTooFast, keptBy: ofGround, hangsOn: onLines }),
  flowTooGreat: inZones({ find: flowTooGreat, keptBy: ofSeason, hangsOn: onSupply }),
  windowTooShort: inGarden(windowTooShort),
  tankDry: inGarden(tankDry),
  allowanceExceeded: inGarden(allowanceExceeded),
  flowTogether: inGarden(flowTogether),
  emittersFarApart: inZones({ find: emittersFarApart, keptBy: ofGround, hangsOn: onLines }),
  potDriesOut: inZones({ find: potDriesOut, keptBy: ofSeason, hangsOn: onNothing }),
  wettedTooLittle: inZones({ find: wettedTooLittle, keptBy: ofGround, hangsOn: onLines }),
  lineDownhill: inZones({ find: lineDownhill, keptBy: ofGround, hangsOn: onLines }),
};

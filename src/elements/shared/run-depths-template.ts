/** How deep the runs of a zone wet the ground of its plantings, beside the minutes: with the longest run of use and what to look for. */
import { html, nothing, type TemplateResult } from 'lit';
import { type RunDepth, runDepths } from '../../engine/ground/run-depths.ts';
import type { PlantingSeason, Season, ZoneSeason } from '../../engine/season/season.ts';
import { howDeepWords } from '../../language/en/how-deep.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolated } from '../../language/format/isolated.ts';
import type { Reader } from '../../language/reader.ts';

export interface DepthsAsked {
  readonly season: Season;
  readonly zone: ZoneSeason;
  readonly week: number;
  /** Of this day alone, from the season's first; left out: of the week's longest run. */
  readonly day?: number | undefined;
  /** Of this planting alone. */
  readonly planting?: PlantingSeason | undefined;
  readonly reader: Reader;
}

/** A sentence for each planting, then where to look; nothing where no run reaches any. */
export function runDepthsTemplate({
  season,
  zone,
  week,
  day,
  planting,
  reader,
}: DepthsAsked): TemplateResult | typeof nothing {
  const say = howDeepWords(reader.language);
  const format = formatFor(reader);
  const runs = runDepths(season, zone, week).filter((run) => day === undefined || run.day === day);
  const told = zone.plantings
    .filter((own) => planting === undefined || own.planting.id === planting.planting.id)
    .flatMap(({ planting: own }) => {
      const run = longest(runs.filter(({ plantingId }) => plantingId === own.id));
      return run === undefined ? [] : [{ run, own }];
    });
  if (told.length === 0) return nothing;
  const deepest = Math.max(...told.filter(({ own }) => own.container === undefined).map(({ run }) => run.depthM));
  const sentence = ({ run, own }: (typeof told)[number]) => {
    const text = own.container === undefined ? say.ground(format, run) : say.pot(format, run);
    return zone.plantings.length > 1 ? say.of(isolated(own.name), text) : text;
  };
  return html`<div class="depths">
    ${told.map((each) => html`<p>${sentence(each)}</p>`)}
    ${deepest > 0 ? html`<p class="quiet">${say.lookGround(format, deepest)}</p>` : nothing}
    ${told.some(({ own }) => own.container !== undefined) ? html`<p class="quiet">${say.lookPot}</p>` : nothing}
  </div>`;
}

/** The first of those that are as long. */
function longest(runs: readonly RunDepth[]): RunDepth | undefined {
  return runs.toSorted((one, other) => other.minutes - one.minutes)[0];
}

import { type Season, SUPPLY_FIELDS } from '../../engine/season/season.ts';
import { type FoundNotice, plantingsOf } from '../../explain/notices/notice.ts';
import { foundLike } from '../../explain/notices/notices-of.ts';
import { canCarry } from '../mix/can-carry.ts';
import { NOTICE_REMEDIES } from './notice-remedies.ts';
import { problemOf } from './problem.ts';
import type { RemediedKind } from './remedied-kinds.ts';
import type { NoticeInPlan, Remedy, RemedyKind } from './remedy.ts';
import { type LitresOf, lackingLitres, sumOver, unmetLitres, wastedLitres } from './trouble.ts';

/** Kinds that bind the garden's hours and water as a whole. */
const SUPPLY_KINDS = ['window-too-short', 'too-long', 'allowance-exceeded', 'tank-dry'] as const;

const HOURS: readonly (typeof SUPPLY_KINDS)[number][] = ['window-too-short', 'too-long'];

type InSeason = Pick<NoticeInPlan<RemediedKind>, 'season' | 'notice'>;

/** What changes the water that lines ask for. */
const LAYS_ANEW: ReadonlySet<RemedyKind> = new Set([
  'other-emitters',
  'other-runs',
  'own-zone',
  'own-zone-and-days',
  'shut-off',
]);

/** Other plantings may go short by so much of what is mended, or of the garden's demand, and no more: rule of this kit. */
const MOST_OF_MENDED = 0.1;
const MOST_OF_DEMAND = 0.001;
/** What is not enough already may become so much worse: rounding. */
const ROUNDING = 0.01;

/**
 * Whether a change does more harm than the good it is made for: something is newly wrong, the hours or the water of the garden suffice
 * less, a source or a line does not carry it, or other plantings go short.
 *
 * Less water for all is what an allowance asks for: what comes of that is told beside it. So it is with hours that do not suffice, as
 * long as nothing is in danger.
 */
export function isWorseElsewhere({ season, notice }: NoticeInPlan<RemediedKind>, remedy: Remedy): boolean {
  const { seasonWith, sideEffects } = remedy;
  const isRationing = remedy.kind === 'fewer-minutes';
  if (isRationing && notice.kind === 'allowance-exceeded') return false;
  if (isRationing && notice.kind === 'window-too-short') {
    return sideEffects.some(({ severity }) => severity === 'danger');
  }
  return (
    sideEffects.length > 0 ||
    suppliesLess({ season, notice }, seasonWith) ||
    (LAYS_ANEW.has(remedy.kind) && !isCarried(season, seasonWith)) ||
    othersLackMore({ season, notice }, remedy)
  );
}

/**
 * Of waste, longer hours are no harm where plants get water for them that they lacked: what is not newly wrong was not enough before, and
 * spared water runs where a cut or a neighbour had taken it.
 */
function suppliesLess({ season, notice }: InSeason, next: Season): boolean {
  const ofAll = (of: Season) => sumOver(of, lackingLitres, () => true);
  const isForPlants = isOfWaste(notice) && ofAll(next) < ofAll(season);
  return SUPPLY_KINDS.some((kind) => {
    if (kind === notice.kind || (isForPlants && HOURS.includes(kind))) return false;
    return amount(next, kind) > amount(season, kind) * (1 + ROUNDING);
  });
}

function isOfWaste({ kind }: Pick<InSeason['notice'], 'kind'>): boolean {
  return NOTICE_REMEDIES[kind].ofPlanting === wastedLitres;
}

function isCarried(season: Season, seasonWith: Season): boolean {
  return canCarry(
    season,
    seasonWith,
    seasonWith.zones.map(({ zone }) => zone.id),
  );
}

/** How much of a kind there is in a season; what the mains make up for is none. */
function amount(season: Season, kind: (typeof SUPPLY_KINDS)[number]): number {
  return foundLike(kind, season)
    .filter((found): found is FoundNotice<typeof kind> => found.kind === kind && found.severity !== 'note')
    .reduce((sum, found) => sum + problemOf(found), 0);
}

/** Of waste, where they both lack more and use less: one that was filled to the brim by chance may come to its goal later. */
function othersLackMore({ season, notice }: InSeason, remedy: Remedy): boolean {
  const { ofPlanting } = NOTICE_REMEDIES[notice.kind];
  const isWaste = isOfWaste(notice);
  const ids = ofPlanting === undefined || isWaste ? [] : plantingsOf(notice);
  const moreOf = (litresOf: LitresOf) => {
    const [before, after] = [season, remedy.seasonWith].map((of) => sumOver(of, litresOf, (id) => !ids.includes(id)));
    return (after as number) - (before as number);
  };
  const more = isWaste ? Math.min(moreOf(lackingLitres), moreOf(unmetLitres)) : moreOf(lackingLitres);
  const mended = ofPlanting === undefined ? 0 : (1 - remedy.remaining) * problemOf(notice);
  return more > Math.max(MOST_OF_MENDED * mended, ofPlanting === undefined ? MOST_OF_DEMAND * demandLitres(season) : 0);
}

function demandLitres({ totals }: Season): number {
  return totals.figures.of(SUPPLY_FIELDS.demandLitres).reduce((sum, litres) => sum + litres, 0);
}

import type { Season } from '../../../engine/season/season.ts';
import type { FoundNotice } from '../notice.ts';
import { oneRunOf, weeksWhere } from '../runs.ts';

/** A cut that asks for more than the zones give up which do not keep their water: one notice for all weeks in which it does. */
export function cutNotMet({ garden, cuts }: Season): readonly FoundNotice<'cut-not-met'>[] {
  if (cuts === undefined) return [];
  const { askedLitres, untakenLitres } = cuts;
  const of = (litres: Float64Array) => (week: number) => litres[week] as number;
  const weeks = weeksWhere(garden.span.weeks, (week) => of(untakenLitres)(week) > 0);
  return oneRunOf(weeks).map((run): FoundNotice<'cut-not-met'> => {
    const untaken = run.weeks.map(of(untakenLitres));
    return {
      kind: 'cut-not-met',
      ...run,
      figures: {
        askedLitres: sum(run.weeks.map(of(askedLitres))),
        untakenLitres: sum(untaken),
        worstWeekLitres: Math.max(...untaken),
      },
    };
  });
}

function sum(litres: readonly number[]): number {
  return litres.reduce((total, each) => total + each, 0);
}

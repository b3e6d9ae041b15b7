/** How great the trouble is that a notice tells of, and whether another tells of the same. */

import type { Season } from '../../engine/season/season.ts';
import { allowanceExceeded } from '../../explain/notices/kinds/allowance-exceeded.ts';
import { emittersFarApart } from '../../explain/notices/kinds/emitters-far-apart.ts';
import { flowTogether } from '../../explain/notices/kinds/flow-together.ts';
import { flowTooGreat } from '../../explain/notices/kinds/flow-too-great.ts';
import { lineDownhill } from '../../explain/notices/kinds/line-downhill.ts';
import { linePressure } from '../../explain/notices/kinds/line-pressure.ts';
import { tankDry } from '../../explain/notices/kinds/tank-dry.ts';
import { windowTooShort } from '../../explain/notices/kinds/window-too-short.ts';
import type { Notice, NoticeKind } from '../../explain/notices/notice.ts';

interface Matter {
  /** Finds such notices, among others perhaps. */
  readonly find: (season: Season) => readonly Notice[];
  /** Grows with the trouble; above 0. */
  readonly amount: (figure: (name: string) => number) => number;
}

const MATTERS: Readonly<Partial<Record<NoticeKind, Matter>>> = {
  'line-too-long': { find: linePressure, amount: (figure) => figure('beyondBounds') },
  'pressure-low': { find: linePressure, amount: (figure) => figure('beyondBounds') },
  'flow-too-great': { find: flowTooGreat, amount: (figure) => figure('excessLpm') },
  'flow-together': { find: flowTogether, amount: (figure) => figure('days') },
  'window-too-short': { find: windowTooShort, amount: (figure) => figure('minutesOverInAll') },
  'allowance-exceeded': { find: allowanceExceeded, amount: (figure) => figure('overLitres') },
  'tank-dry': { find: tankDry, amount: (figure) => figure('mainsLitres') },
  'emitters-far-apart': {
    find: emittersFarApart,
    amount: (figure) => figure('spacingM') - figure('widestSpacingM'),
  },
  'line-downhill': { find: lineDownhill, amount: () => 1 },
};

/** How great a notice's trouble is, in a measure of its kind; 0 of a kind without remedies here. */
export function amountOf({ kind, figures }: Notice): number {
  return MATTERS[kind]?.amount((name) => figures[name] ?? 0) ?? 0;
}

/** All the notices in a season that are of a notice's kind; of an allowance, those of the same span. */
export function likeNotices(season: Season, { kind, figures }: Notice): readonly Notice[] {
  const isOfWeek = 'weekAllowanceLitres' in figures;
  return (MATTERS[kind]?.find(season) ?? []).filter(
    (other) => other.kind === kind && 'weekAllowanceLitres' in other.figures === isOfWeek,
  );
}

import { expect, it } from 'vitest';
import type { NoticeKind } from '../../../src/explain/notices/notice.ts';
import { ranked } from '../../../src/explain/notices/rank.ts';
import { noticeOf } from '../../support/notices.ts';

const notice = ({
  kind = 'short',
  ...change
}: { readonly kind?: NoticeKind } & NonNullable<Parameters<typeof noticeOf>[1]>) =>
  noticeOf(kind, { severity: 'warning', ...change });

it('puts severity first', () => {
  const note = notice({ severity: 'note', kind: 'no-line', figures: { unmetLitres: 9 } });
  const warning = notice({ severity: 'warning', kind: 'over' });
  const danger = notice({ severity: 'danger', kind: 'short' });
  expect(ranked([note, warning, danger])).toEqual([danger, warning, note]);
});

it('puts what is broken before what wastes and what is good to know, whatever their shares', () => {
  const kinds = [
    ['short', { unmetLitres: 1, demandLitres: 100 }],
    ['over', { drainedLitres: 60, seasonLitres: 100 }],
    ['hand-set', { minutes: 90, computedMinutes: 10 }],
  ] as const;
  const inOrder = kinds.map(([kind, figures]) => notice({ kind, figures }));
  expect(ranked(inOrder.toReversed())).toEqual(inOrder);
});

it('puts the greater share before the lesser, whatever the litres, and keeps the order given between equals', () => {
  const first = notice({ figures: { unmetLitres: 100, demandLitres: 1000 }, zoneId: 'first' });
  const second = notice({ kind: 'closed', figures: { unmetLitres: 1, demandLitres: 10 }, zoneId: 'second' });
  const much = notice({ figures: { unmetLitres: 9, demandLitres: 10 } });
  expect(ranked([first, second, much])).toEqual([much, first, second]);
});

it('weighs a lack of water by the demand unmet, and what drains by the litres of the season', () => {
  const drained = (drainedLitres: number) => notice({ kind: 'over', figures: { drainedLitres, seasonLitres: 100 } });
  expect(ranked([drained(1), drained(50), drained(20)])).toEqual([drained(50), drained(20), drained(1)]);
  const past = notice({ kind: 'crop-past', figures: { daysPast: 15 } });
  const lack = (unmetLitres: number) => notice({ figures: { unmetLitres, demandLitres: 10 } });
  expect(ranked([lack(1), past, lack(9)])).toEqual([lack(9), past, lack(1)]);
});

it('leaves the list it was given as it was', () => {
  const given = Object.freeze([notice({ severity: 'note' }), notice({ severity: 'danger' })]);
  expect(ranked(given).map(({ severity }) => severity)).toEqual(['danger', 'note']);
  expect(given[0]?.severity).toBe('note');
});

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

it('puts what cannot be run before what harms, is to be checked, wastes, and is good to know', () => {
  const inOrder = (['no-line', 'dry', 'crop-past', 'over', 'hand-set'] as const).map((kind) => notice({ kind }));
  expect(ranked(inOrder.toReversed())).toEqual(inOrder);
});

it('puts much before little, and keeps the order given between equals', () => {
  const first = notice({ figures: { unmetLitres: 1 }, zoneId: 'first' });
  const second = notice({ kind: 'closed', figures: { unmetLitres: 1 }, zoneId: 'second' });
  const much = notice({ figures: { unmetLitres: 9 } });
  expect(ranked([first, second, much])).toEqual([much, first, second]);
});

it('counts the need, or else what drained, where nothing went unmet', () => {
  const unmet = notice({ figures: { unmetLitres: 3, neededLitres: 50 } });
  const needed = notice({ figures: { unmetLitres: 0, neededLitres: 5 } });
  const drained = notice({ figures: { drainedLitres: 4 } });
  expect(ranked([unmet, drained, needed])).toEqual([needed, drained, unmet]);
});

it('leaves the list it was given as it was', () => {
  const given = Object.freeze([notice({ severity: 'note' }), notice({ severity: 'danger' })]);
  expect(ranked(given).map(({ severity }) => severity)).toEqual(['danger', 'note']);
  expect(given[0]?.severity).toBe('note');
});

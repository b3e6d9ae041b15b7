import { describe, expect, it } from 'vitest';
import { cautions } from '../../../src/elements/shared/words/cautions.ts';
import { CAUTION_IDS } from '../../../src/explain/notices/cautions.ts';
import { NOTICE_KINDS } from '../../../src/explain/notices/notice-kinds.ts';

describe('cautions', () => {
  it('all have words where they are shown, in full and in short', () => {
    for (const id of CAUTION_IDS) expect(cautions[id].length).toBeGreaterThan(20);
    expect(Object.keys(cautions.short).sort()).toEqual([...CAUTION_IDS].sort());
  });

  it.each([
    ['a tank: not for drinking, and kept apart from the mains', 'tank-dry', ['tank', 'backflow']],
    ['a new valve or run: backflow, buried services, local codes', 'flow-too-great', ['backflow', 'digging', 'codes']],
    ['a line that is laid anew', 'line-too-long', ['backflow', 'digging', 'codes']],
    ['hours: watering restrictions come first', 'window-too-short', ['codes']],
    ['an allowance', 'allowance-exceeded', ['codes']],
  ] as const)('stand beside %s', (_name, kind, ids) => {
    expect(NOTICE_KINDS[kind].cautions).toEqual(expect.arrayContaining([...ids]));
  });
});

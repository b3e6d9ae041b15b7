import { describe, expect, it } from 'vitest';
import { NOTICE_KINDS } from '../../../src/explain/notices/notice-kinds.ts';

describe('cautions', () => {
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

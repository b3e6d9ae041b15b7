/** A plan there and back through an address; gzip, DEFLATE and base64url are checked against Node's own zlib and Buffer. */
import { deflateRawSync, gunzipSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromBase64Url, toBase64Url } from '../../../src/exchange/link/base64url.ts';
import { linkTo, withoutYears } from '../../../src/exchange/link/link-to.ts';
import { LinkError, linkContent, planTextFromLink } from '../../../src/exchange/link/plan-text-from-link.ts';
import { readPlan } from '../../../src/plan/reading/read-plan.ts';
import { arbitraryPlan } from '../../support/arbitrary-plan.ts';
import { mixedGarden, oneBed } from '../../support/small-plans.ts';

const PAGE = 'https://garden.example/plan.html?year=2027';
/** As 0.1.0 made links: DEFLATE alone. */
const packed = (text: string | Uint8Array) => `#runnel=${deflateRawSync(text).toString('base64url')}`;
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const refusal = (fragment: string): Promise<string> =>
  planTextFromLink(fragment).then(
    (text) => `taken: ${text?.slice(0, 40)}`,
    (error: unknown) => (error instanceof LinkError ? error.code : `another error: ${String(error)}`),
  );

describe('base64url', () => {
  it('writes and reads bytes as Buffer does (RFC 4648, section 5)', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 20_000 }), (bytes) => {
        const text = toBase64Url(bytes);
        expect(text).toBe(Buffer.from(bytes).toString('base64url'));
        expect(fromBase64Url(text)).toEqual(bytes);
      }),
    );
  });

  it.each(['a', 'ab+/', 'ab==', 'ab c', 'é'])('refuses “%s”', (text) => {
    expect(fromBase64Url(text)).toBeUndefined();
  });
});

describe('a link', () => {
  it('carries the plan behind the # alone, as gzip', async () => {
    const link = await linkTo(mixedGarden(), `${PAGE}#beds`);
    const [page, fragment = ''] = link.split('#');
    expect(page).toBe(PAGE);
    const bytes = Buffer.from(fragment.replace('runnel=', ''), 'base64url');
    expect(JSON.parse(gunzipSync(bytes).toString())).toEqual(mixedGarden());
    expect(link.length).toBeLessThan(JSON.stringify(mixedGarden()).length);
  });

  it('brings any plan back as it was, but for its real years, and says so', async () => {
    await fc.assert(
      fc.asyncProperty(arbitraryPlan(), async (plan) => {
        const text = await planTextFromLink(new URL(await linkTo(plan, PAGE)).hash);
        const [back, was] = [readPlan(text ?? ''), readPlan(JSON.stringify(withoutYears(plan)))];
        expect(back).toEqual(was);
        const { lacksYears } = (await linkContent(await linkTo(plan, PAGE))) ?? {};
        expect(lacksYears).toBe(plan.site.years !== undefined);
      }),
      { numRuns: 30 },
    );
  });

  it('is read from a whole address, and from among other parts of a fragment', async () => {
    const link = await linkTo(oneBed(), PAGE);
    const fragment = link.split('#')[1];
    expect(JSON.parse((await planTextFromLink(link)) ?? '')).toEqual(oneBed());
    expect(JSON.parse((await planTextFromLink(`#week=3&${fragment}&print`)) ?? '')).toEqual(oneBed());
  });

  it.each(['', '#', '#beds', PAGE, '#xrunnel=abc'])('is none: “%s”', async (fragment) => {
    expect(await planTextFromLink(fragment)).toBeUndefined();
  });

  it('is refused wherever it is cut short', async () => {
    const fragment = new URL(await linkTo(oneBed(), PAGE)).hash;
    for (let length = '#runnel='.length; length < fragment.length; length += 37) {
      expect(await refusal(fragment.slice(0, length))).toBe('damaged');
    }
    expect(await refusal(fragment.slice(0, -1))).toBe('damaged');
  });

  it('is refused, or carries the same plan, wherever one letter is another', async () => {
    const plan = mixedGarden();
    const fragment = new URL(await linkTo(plan, PAGE)).hash;
    const begin = '#runnel='.length;
    const answers = new Map<string, number>();
    for (let index = begin; index < fragment.length; index++) {
      const code = LETTERS.indexOf(fragment[index] as string);
      // One bit, and all of them.
      for (const other of [LETTERS[code ^ 1], LETTERS[code ^ 32], LETTERS[63 - code]]) {
        const text = await planTextFromLink(`${fragment.slice(0, index)}${other}${fragment.slice(index + 1)}`).catch(
          (error: unknown) => error,
        );
        const answer = text instanceof LinkError ? text.code : text === JSON.stringify(plan) ? 'same' : 'another';
        answers.set(answer, (answers.get(answer) ?? 0) + 1);
      }
    }
    expect(answers.get('another')).toBeUndefined();
    // Ten bytes of a heading, of which the time and the system say nothing of the plan.
    expect(answers.get('same')).toBeLessThan(40);
    expect(answers.get('damaged')).toBeGreaterThan(2.9 * (fragment.length - begin - 14));
  });

  it('of 0.1.0 is read, and is known to have no checksum', async () => {
    const text = JSON.stringify(oneBed());
    expect(await linkContent(packed(text))).toEqual({ text, isChecked: false, lacksYears: false });
    expect(await linkContent(await linkTo(oneBed(), PAGE))).toEqual({ text, isChecked: true, lacksYears: false });
  });

  it('is refused where it is no text (UTF-8)', async () => {
    expect(await refusal(packed(Uint8Array.of(0xff, 0xfe, 0xfd)))).toBe('damaged');
  });

  it('is refused beyond 5 MB, without inflating the rest', async () => {
    expect(await planTextFromLink(packed(`{${'0'.repeat(4_999_999)}`))).toHaveLength(5_000_000);
    expect(await refusal(packed(`{${'0'.repeat(5_000_000)}`))).toBe('too-large');
    const bomb = packed(Buffer.alloc(300_000_000, 48));
    const before = process.memoryUsage().rss;
    expect(await refusal(bomb)).toBe('too-large');
    expect(process.memoryUsage().rss - before).toBeLessThan(150_000_000);
  });
});

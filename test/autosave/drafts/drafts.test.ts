import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { FakeStorage } from '../fake-storage.ts';
import { Tab } from '../tab.ts';

let storage: FakeStorage;

beforeEach(() => {
  storage = new FakeStorage();
  vi.useFakeTimers({ now: new Date('2027-06-07T08:00:00Z') });
});
afterEach(() => {
  vi.useRealTimers();
});

const NOTE = 'Note, Tomatoes, Raised beds';
const field = {};
const textsKept = () =>
  Array.from({ length: storage.length }, (_, index) => storage.key(index) ?? '').filter((key) =>
    key.startsWith('runnel-typed:'),
  );

it('what stands in a field is kept within 300 ms, however fast one types on, and shown at the next visit', async () => {
  const tab = await Tab.open(storage);
  const sentence = 'Mulch before the heat of July, two fingers deep';
  for (let length = 1; length <= sentence.length; length++) {
    tab.drafts?.put(field, NOTE, sentence.slice(0, length));
    vi.advanceTimersByTime(40);
    if (length > 8) expect(storage.getItem(textsKept()[0] ?? '')).toContain(sentence.slice(0, length - 8));
  }
  vi.advanceTimersByTime(300);
  // The tab is killed: nothing more is called.
  const next = await Tab.open(storage);
  expect(next.report.drafts).toMatchObject([{ field: NOTE, text: sentence }]);
  const later = await Tab.open(storage);
  expect(later.report.drafts, 'until somebody has done with it').toHaveLength(1);
});

it('is not kept any longer once it is entered, given up, or empty', async () => {
  const tab = await Tab.open(storage);
  const other = {};
  tab.drafts?.put(field, NOTE, 'one');
  tab.drafts?.put(other, 'Name', 'two');
  vi.advanceTimersByTime(300);
  expect(textsKept()).toHaveLength(2);
  tab.drafts?.drop(field);
  expect(textsKept()).toHaveLength(1);
  tab.drafts?.put(other, 'Name', '');
  expect(textsKept()).toHaveLength(0);
  tab.drafts?.put(field, NOTE, 'never written');
  tab.drafts?.drop(field);
  vi.advanceTimersByTime(300);
  expect(textsKept()).toHaveLength(0);
});

it('of a tab that is still there is that tab’s business', async () => {
  const tab = await Tab.open(storage);
  tab.drafts?.put(field, NOTE, 'still typing');
  vi.advanceTimersByTime(300);
  const beside = await Tab.open(storage, { openTabs: new Set([tab.drafts?.tab ?? '']) });
  expect(beside.report.drafts).toEqual([]);
  expect(textsKept()).toHaveLength(1);
});

it('is copied, and forgotten, by its own buttons', async () => {
  const tab = await Tab.open(storage);
  tab.drafts?.put(field, NOTE, 'half a sentence');
  tab.autosave.save();
  const next = await Tab.open(storage);
  const id = next.report.drafts[0]?.id;
  next.autosave.choose('copy-draft', id);
  expect(next.copiedTexts).toEqual(['half a sentence']);
  expect(next.report.drafts).toHaveLength(1);
  next.autosave.choose('delete-draft', id);
  expect(next.report.drafts).toEqual([]);
  expect(textsKept()).toHaveLength(0);
});

it('comes back from the mirror where the browser lost the rest', async () => {
  const texts = new Map<string, string>();
  const mirror = {
    all: () => Promise.resolve(texts),
    set: (key: string, text: string) => texts.set(key, text),
    remove: (key: string) => texts.delete(key),
    open: () => undefined,
    close: () => undefined,
  };
  const tab = await Tab.open(storage, { mirror });
  tab.drafts?.put(field, NOTE, 'half a sentence');
  tab.autosave.save();
  storage.clear();
  expect((await Tab.open(storage, { mirror })).report.drafts).toMatchObject([{ text: 'half a sentence' }]);
});

it('that cannot be read as it was written is shown as it lies there', async () => {
  storage.setItem('runnel-typed:gone-1:beds', 'half a se');
  storage.setItem('runnel-typed:gone-2:beds', '{"of":3,"text":"whole"}');
  storage.setItem('runnel-typed:gone-3:beds', 'null');
  storage.setItem('runnel-typed:gone-4:borders', 'another plan’s');
  const tab = await Tab.open(storage);
  expect(tab.report.drafts.map(({ field, text }) => [field, text])).toEqual([
    ['', 'half a se'],
    ['', 'whole'],
  ]);
});

it('is neither shown nor kept where the plan can only be looked at, and a reason to say so where nothing can be kept', async () => {
  storage.setItem('runnel-typed:gone-1:beds', '{"of":"","text":"whole"}');
  expect((await Tab.open(storage, { readOnly: true })).report.drafts).toEqual([]);
  storage.isForbidden = true;
  const tab = await Tab.open(storage);
  tab.drafts?.put(field, NOTE, 'lost');
  vi.advanceTimersByTime(300);
  expect(tab.notes).toEqual(['not-saved']);
  storage.isForbidden = false;
  tab.autosave.choose('retry', 'not-saved');
  expect(tab.notes).toEqual([]);
  expect(textsKept()).toHaveLength(2);
});

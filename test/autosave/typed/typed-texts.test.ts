import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { FakeStorage } from '../fake-storage.ts';
import { Tab } from '../kept-tab.ts';

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
  Array.from({ length: storage.length }, (_, place) => storage.key(place) ?? '').filter((key) =>
    key.startsWith('runnel-typed:'),
  );

it('what stands in a field is kept within 300 ms, however fast one types on, and shown at the next visit', async () => {
  const tab = await Tab.open(storage);
  const sentence = 'Mulch before the heat of July, two fingers deep';
  for (let length = 1; length <= sentence.length; length++) {
    tab.typed?.put(field, NOTE, sentence.slice(0, length));
    vi.advanceTimersByTime(40);
    if (length > 8) expect(storage.getItem(textsKept()[0] ?? '')).toContain(sentence.slice(0, length - 8));
  }
  vi.advanceTimersByTime(300);
  // The tab is killed: nothing more is called.
  const next = await Tab.open(storage);
  expect(next.keeping.typed).toMatchObject([{ of: NOTE, text: sentence }]);
  const later = await Tab.open(storage);
  expect(later.keeping.typed, 'until somebody has done with it').toHaveLength(1);
});

it('is not kept any longer once it is entered, given up, or empty', async () => {
  const tab = await Tab.open(storage);
  const other = {};
  tab.typed?.put(field, NOTE, 'one');
  tab.typed?.put(other, 'Name', 'two');
  vi.advanceTimersByTime(300);
  expect(textsKept()).toHaveLength(2);
  tab.typed?.drop(field);
  expect(textsKept()).toHaveLength(1);
  tab.typed?.put(other, 'Name', '');
  expect(textsKept()).toHaveLength(0);
  tab.typed?.put(field, NOTE, 'never written');
  tab.typed?.drop(field);
  vi.advanceTimersByTime(300);
  expect(textsKept()).toHaveLength(0);
});

it('of a tab that is still there is that tab’s business', async () => {
  const tab = await Tab.open(storage);
  tab.typed?.put(field, NOTE, 'still typing');
  vi.advanceTimersByTime(300);
  const beside = await Tab.open(storage, { living: new Set([tab.typed?.tab ?? '']) });
  expect(beside.keeping.typed).toEqual([]);
  expect(textsKept()).toHaveLength(1);
});

it('is copied, and forgotten, by its own buttons', async () => {
  const tab = await Tab.open(storage);
  tab.typed?.put(field, NOTE, 'half a sentence');
  tab.keeper.write();
  const next = await Tab.open(storage);
  const id = next.keeping.typed[0]?.id;
  next.keeper.choose('copy-text', id);
  expect(next.copied).toEqual(['half a sentence']);
  expect(next.keeping.typed).toHaveLength(1);
  next.keeper.choose('forget-text', id);
  expect(next.keeping.typed).toEqual([]);
  expect(textsKept()).toHaveLength(0);
});

it('comes back from the copy where the browser took the first place along', async () => {
  const texts = new Map<string, string>();
  const copy = {
    all: () => Promise.resolve(texts),
    set: (key: string, text: string) => texts.set(key, text),
    remove: (key: string) => texts.delete(key),
  };
  const tab = await Tab.open(storage, { copy });
  tab.typed?.put(field, NOTE, 'half a sentence');
  tab.keeper.write();
  storage.clear();
  expect((await Tab.open(storage, { copy })).keeping.typed).toMatchObject([{ text: 'half a sentence' }]);
});

it('that cannot be read as it was written is shown as it lies there', async () => {
  storage.setItem('runnel-typed:gone-1:beds', 'half a se');
  storage.setItem('runnel-typed:gone-2:beds', '{"of":3,"text":"whole"}');
  storage.setItem('runnel-typed:gone-3:beds', 'null');
  storage.setItem('runnel-typed:gone-4:borders', 'another plan’s');
  const tab = await Tab.open(storage);
  expect(tab.keeping.typed.map(({ of, text }) => [of, text])).toEqual([
    ['', 'half a se'],
    ['', 'whole'],
  ]);
});

it('is neither shown nor kept where the plan can only be looked at, and a reason to say so where nothing can be kept', async () => {
  storage.setItem('runnel-typed:gone-1:beds', '{"of":"","text":"whole"}');
  expect((await Tab.open(storage, { readOnly: true })).keeping.typed).toEqual([]);
  storage.isForbidden = true;
  const tab = await Tab.open(storage);
  tab.typed?.put(field, NOTE, 'lost');
  vi.advanceTimersByTime(300);
  expect(tab.notes).toEqual(['not-kept']);
  storage.isForbidden = false;
  tab.keeper.choose('retry', 'not-kept');
  expect(tab.notes).toEqual([]);
  expect(textsKept()).toHaveLength(2);
});

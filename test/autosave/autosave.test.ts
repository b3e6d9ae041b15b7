import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { savedPlanIn } from '../../src/autosave/saved-plan.ts';
import type { StorageMirror } from '../../src/autosave/storage-mirror.ts';
import { dayNumber } from '../../src/engine/calendar.ts';
import { runThrough } from '../../src/engine/run-through.ts';
import { withoutYears } from '../../src/exchange/link/link-to.ts';
import { LinkError } from '../../src/exchange/link/plan-text-from-link.ts';
import { packedYears } from '../../src/plan/packed-years.ts';
import type { Plan } from '../../src/plan/schema/plan-schema.ts';
import type { SeasonWork } from '../../src/store/plan-store.ts';
import { benchGarden } from '../bench/gardens.ts';
import { mixedGarden, oneBed } from '../support/small-plans.ts';
import { FakeStorage } from './fake-storage.ts';
import { KEY, minutesIn, Tab, type TabOptions } from './tab.ts';

const YEARS = {
  firstDay: dayNumber('2020-01-01'),
  rainMm: new Float64Array(1500).fill(1),
  etoMm: new Float64Array(1500).fill(3),
};

let storage: FakeStorage;

beforeEach(() => {
  storage = new FakeStorage();
  vi.useFakeTimers({ now: new Date('2027-06-07T08:00:00Z') });
});
afterEach(() => {
  vi.useRealTimers();
});

const wait = (milliseconds = 300) => vi.advanceTimersByTime(milliseconds);
const textOf = (plan: Plan) => JSON.stringify(plan);
const linked = (plan: Plan | string, isChecked = true, lacksYears = false) =>
  Promise.resolve({ text: typeof plan === 'string' ? plan : textOf(plan), isChecked, lacksYears });

/** A tab that has set 70 minutes, which are kept, and is closed. */
async function visit(minutes = 70): Promise<void> {
  const tab = await Tab.open(storage);
  tab.edit(minutes);
  tab.autosave.stop();
}

describe('a plan that is saved', () => {
  it('is not saved before it is changed, then within 300 ms, and at once where the tab goes', async () => {
    const tab = await Tab.open(storage);
    wait(10_000);
    expect(storage.length).toBe(0);
    tab.edit(70);
    expect(storage.length).toBe(0);
    wait();
    expect(minutesIn(storage)).toEqual([70]);
    tab.edit(80);
    tab.autosave.save();
    expect(minutesIn(storage)).toEqual([80]);
    expect(tab.report).toEqual({ status: 'saved', notes: [], copies: [], drafts: [] });
  });

  it('is saved every 300 ms while edits follow one another without a pause', async () => {
    const tab = await Tab.open(storage);
    for (let minutes = 60; minutes < 100; minutes++) {
      tab.edit(minutes);
      wait(50);
      if (minutes > 65) expect(minutesIn(storage)[0]).toBeGreaterThanOrEqual(minutes - 6);
    }
  });

  it('comes before the page’s own at the next visit, undo and redo included, and the page says so', async () => {
    const tab = await Tab.open(storage);
    tab.edit(70);
    tab.edit(80);
    tab.store.step('undo');
    wait();
    const next = await Tab.open(storage);
    expect(next.minutes).toBe(70);
    expect(next.report.notes).toEqual([
      { code: 'restored', saved: '2027-06-07T08:00:00.250Z', hasOtherBase: false, choices: ['own-plan', 'close'] },
    ]);
    next.autosave.choose('close', 'restored');
    expect(next.notes).toEqual([]);
    expect((await Tab.open(storage, { base: 'other.runnel.json' })).note('restored')).toMatchObject({
      hasOtherBase: true,
    });
    expect((await Tab.open(storage, { ownPlan: undefined })).report.notes[0]?.choices).toEqual(['close']);
  });

  it('makes way for the page’s own, becomes a copy, and can be opened again', async () => {
    await visit();
    const tab = await Tab.open(storage);
    tab.autosave.choose('own-plan');
    expect(tab.minutes).toBeUndefined();
    expect(tab.report.notes).toEqual([{ code: 'own-plan', savedPlan: 'copy', choices: ['close'] }]);
    expect(tab.report.copies).toMatchObject([{ name: 'One bed', saved: '2027-06-07T08:00:00.000Z' }]);
    expect((await Tab.open(storage)).minutes).toBeUndefined();
    tab.edit(20);
    wait();
    tab.autosave.choose('restore-copy', tab.report.copies[0]?.id);
    expect(tab.minutes).toBe(70);
    expect(minutesIn(storage)).toEqual([70, 20]);
    expect(tab.report.copies).toHaveLength(1);
    const [copy] = tab.report.copies;
    tab.autosave.choose('save-copy', copy?.id);
    expect(savedPlanIn(tab.copyFiles[0])?.plan.choices?.['beds']?.['2027-06-07']?.minutes).toBe(20);
    tab.autosave.choose('delete-copy', copy?.id);
    expect(minutesIn(storage)).toEqual([70]);
    expect(tab.report.copies).toEqual([]);
  });

  it('becomes a copy where a person opens a file, which is saved at once', async () => {
    await visit();
    const tab = await Tab.open(storage);
    tab.edit(75);
    tab.store.openText(textOf(mixedGarden()));
    wait(0);
    expect(savedPlanIn(storage.getItem(KEY) ?? '')?.plan.name).toBe('Mixed garden');
    expect(minutesIn(storage)).toEqual([undefined, 75]);
    expect(tab.notes).toEqual(['replaced']);
    tab.edit(1);
    wait();
    expect(storage.length).toBe(2);
  });

  it('stays where the page opens a plan of its own, and is one press away', async () => {
    await visit();
    const tab = await Tab.open(storage);
    tab.store.openPlan(mixedGarden(), 'page');
    wait();
    expect(minutesIn(storage)).toEqual([70]);
    expect(tab.report.notes).toEqual([{ code: 'own-plan', savedPlan: 'saved', choices: ['saved-plan', 'close'] }]);
    tab.autosave.choose('saved-plan');
    expect(tab.minutes).toBe(70);
    tab.store.openPlan({ ...oneBed(), name: 'Of the page' }, 'page');
    tab.edit(15);
    wait();
    expect(minutesIn(storage)).toEqual([15, 70]);
    expect(tab.notes).toEqual(['replaced']);
  });

  it('is neither read nor written while it is read-only', async () => {
    await visit();
    const tab = await Tab.open(storage, { readOnly: true });
    expect(tab.minutes).toBeUndefined();
    expect(tab.report.status).toBe('off');
    tab.store.openText(textOf(mixedGarden()));
    wait();
    expect(minutesIn(storage)).toEqual([70]);
    tab.store.show({ locale: 'en-GB', readOnly: false });
    tab.edit(10);
    wait();
    expect(minutesIn(storage)[1]).toBe(70);
  });

  it('gives way to a person who was quicker than the storage', async () => {
    await visit();
    const tab = new Tab(storage);
    tab.store.openText(textOf(mixedGarden()));
    await vi.advanceTimersByTimeAsync(300);
    expect(tab.store.view.plan?.name).toBe('Mixed garden');
    expect(minutesIn(storage)).toEqual([undefined, 70]);
  });
});

it('what version 0.1.0 saved is found and opened: the plan, its copies and its drafts', async () => {
  const written = (name: string) =>
    JSON.stringify({
      ...{ format: 'runnel-kept', version: 1, writer: 'k3j9x2ab', revision: 4, seen: { old: 3 } },
      ...{ saved: '2027-05-01T10:00:00.000Z', plan: { ...oneBed(), name }, base: 'garden.runnel.json' },
    });
  storage.setItem('runnel:beds', written('Last year’s'));
  storage.setItem('runnel-aside:q1w2e3r4:beds', written('Put aside'));
  storage.setItem('runnel-typed:gone-1:beds', '{"of":"Name, Tomatoes","text":"Paste toma"}');
  const tab = await Tab.open(storage);
  expect(tab.store.view.plan?.name).toBe('Last year’s');
  expect(tab.report).toMatchObject({
    status: 'saved',
    notes: [{ code: 'restored', saved: '2027-05-01T10:00:00.000Z', hasOtherBase: false }],
    copies: [{ id: 'q1w2e3r4', name: 'Put aside' }],
    drafts: [{ field: 'Name, Tomatoes', text: 'Paste toma' }],
  });
  tab.edit(70);
  wait();
  expect(minutesIn(storage)[0]).toBe(70);
  expect(tab.report.copies).toHaveLength(1);
});

it('what was changed while it could be edited is saved where it can only be looked at from then on', async () => {
  const tab = await Tab.open(storage);
  tab.edit(70);
  tab.store.show({ readOnly: true });
  expect(minutesIn(storage)).toEqual([70]);
});

it('a link that leaves out the years of the saved plan is that plan, and of any other says so', async () => {
  const years = packedYears({ ...YEARS, source: 'a station', season: oneBed().season });
  const withYears = { ...oneBed(), site: { ...oneBed().site, years } } as Plan;
  const tab = await Tab.open(storage);
  tab.store.openPlan(withYears);
  wait();
  const again = await Tab.open(storage, { link: linked(withoutYears(withYears), true, true) });
  expect(again.notes).toEqual(['restored']);
  expect(again.store.view.plan?.site.years).toEqual(years);
  const other = await Tab.open(storage, { link: linked({ ...withoutYears(withYears), name: 'Other' }, true, true) });
  expect(other.note('link')).toMatchObject({ lacksYears: true });
});

describe('a large plan', () => {
  const large = () => ({ ...benchGarden(80), name: 'Large' });

  /** A tab that computes plans only where the returned function is called. */
  function slowTab(options: TabOptions = {}) {
    const going: (() => void)[] = [];
    const work: SeasonWork = (steps) => new Promise((resolve) => going.push(() => resolve(runThrough(steps))));
    const tab = new Tab(storage, { ...options, work });
    return { tab, going, goOn: () => going.shift()?.() };
  }

  async function saveLarge(): Promise<void> {
    const tab = await Tab.open(storage);
    tab.store.openPlan(large());
    wait();
  }

  it('that was saved is computed a little at a time before it is opened', async () => {
    await saveLarge();
    const { tab, going, goOn } = slowTab();
    await vi.advanceTimersByTimeAsync(1000);
    expect(tab.store.view.plan).toBeUndefined();
    goOn();
    await tab.started;
    expect(tab.store.view.plan?.name).toBe('Large');
    expect(tab.store.view.season?.zones).toHaveLength(80);
    expect(tab.note('restored')).toBeDefined();
    expect(going).toEqual([]);
  });

  it('gives way to a person who opens another one meanwhile', async () => {
    await saveLarge();
    const { tab, goOn } = slowTab();
    await vi.advanceTimersByTimeAsync(0);
    tab.store.openText(textOf(mixedGarden()));
    goOn();
    await tab.started;
    wait();
    expect(tab.store.view.plan?.name).toBe('Mixed garden');
    expect(tab.report.copies.map(({ name }) => name)).toEqual(['Large']);
  });

  it('of another tab is shown once it is computed', async () => {
    const { tab, goOn } = slowTab();
    await tab.started;
    await saveLarge();
    tab.autosave.look();
    expect(tab.store.view.plan?.name).toBe('One bed');
    goOn();
    await vi.advanceTimersByTimeAsync(0);
    expect(tab.store.view.plan?.name).toBe('Large');
    expect(tab.notes).toEqual(['other-tab']);
  });

  it('of a link is too', async () => {
    const { tab, goOn } = slowTab({ link: linked(large()) });
    await vi.advanceTimersByTimeAsync(0);
    expect(tab.store.view.plan).toBeUndefined();
    goOn();
    await tab.started;
    expect(tab.store.view.plan?.name).toBe('Large');
    expect(tab.notes).toEqual(['link']);
  });
});

describe('storage that fails', () => {
  it.each([
    ['{"format":"runnel-kept","version":1,', 'unreadable'],
    ['garbage', 'unreadable'],
    [JSON.stringify({ format: 'runnel-kept', version: 9 }), 'newer'],
  ])('becomes a copy where it is damaged: %s', async (text, code) => {
    storage.setItem(KEY, text);
    const tab = await Tab.open(storage);
    expect(tab.store.view.plan?.name).toBe('One bed');
    expect(tab.store.view.faults).toEqual([]);
    expect(tab.note('damaged')).toMatchObject({ damage: { code } });
    expect(tab.report.copies).toMatchObject([{ name: undefined }]);
    tab.autosave.choose('save-copy', tab.report.copies[0]?.id);
    expect(tab.copyFiles).toEqual([text]);
    tab.edit(70);
    wait();
    expect(minutesIn(storage)).toEqual([70, undefined]);
  });

  it('becomes a copy where it is damaged while the page is open', async () => {
    const tab = await Tab.open(storage);
    tab.edit(70);
    wait();
    storage.setItem(KEY, 'garbage');
    tab.autosave.look();
    tab.edit(80);
    wait();
    expect(minutesIn(storage)).toEqual([80, undefined]);
    expect(tab.notes).toEqual(['damaged']);
  });

  it('lets editing go on where it is full, says so, and is silent when it works again', async () => {
    const tab = await Tab.open(storage);
    tab.edit(70);
    wait();
    storage.quota = 100;
    tab.edit(80);
    wait();
    expect(tab.report.status).toBe('not-saved');
    expect(tab.note('not-saved')).toEqual({ code: 'not-saved', fault: 'full', choices: ['save-file', 'retry'] });
    expect(minutesIn(storage)).toEqual([70]);
    expect(tab.edit(90)).toBe(true);
    wait();
    tab.autosave.choose('save-file');
    expect(tab.planFiles[0]?.choices?.['beds']?.['2027-06-07']?.minutes).toBe(90);
    storage.quota = 1e6;
    wait(3000);
    expect(minutesIn(storage)).toEqual([90]);
    expect(tab.report).toMatchObject({ status: 'saved', notes: [] });
  });

  it('lets editing go on where it is forbidden, and saves the plan once it is not', async () => {
    await visit();
    storage.isForbidden = true;
    const tab = await Tab.open(storage);
    expect(tab.store.view.plan?.name).toBe('One bed');
    expect(tab.note('not-saved')).toMatchObject({ fault: 'forbidden' });
    tab.edit(80);
    wait();
    expect(tab.minutes).toBe(80);
    storage.isForbidden = false;
    tab.autosave.choose('retry');
    expect(minutesIn(storage)).toEqual([80, 70]);
    expect(tab.notes).toEqual(['replaced']);
  });

  it('may be null', async () => {
    Object.assign(storage, { access: () => null });
    const tab = await Tab.open(storage);
    tab.edit(80);
    wait();
    expect(tab.report.status).toBe('not-saved');
  });

  it('overwrites nothing where there is no room for a copy', async () => {
    await visit();
    const tab = await Tab.open(storage);
    tab.store.openText(textOf(mixedGarden()));
    storage.quota = (storage.getItem(KEY)?.length ?? 0) + KEY.length;
    wait();
    expect(tab.report.status).toBe('not-saved');
    expect(minutesIn(storage)).toEqual([70]);
  });
});

describe('two tabs on one plan', () => {
  it('where one is idle, it takes the other’s changes over and says so', async () => {
    const [one, two] = [await Tab.open(storage), await Tab.open(storage)];
    one.edit(70);
    wait();
    two.autosave.look();
    expect(two.minutes).toBe(70);
    expect(two.notes).toEqual(['other-tab']);
    two.edit(80);
    wait();
    one.autosave.look();
    expect(one.minutes).toBe(80);
    expect(minutesIn(storage)).toEqual([80]);
  });

  it('where an idle one has missed some of them, it takes the last', async () => {
    const [one, two] = [await Tab.open(storage), await Tab.open(storage)];
    two.edit(60);
    wait();
    one.autosave.look();
    for (const minutes of [70, 80, 90]) {
      one.edit(minutes);
      wait();
    }
    two.autosave.look();
    expect(two.minutes).toBe(90);
    expect(two.notes).toEqual(['other-tab']);
  });

  /** Both have changes that the other has not seen. */
  async function apart(): Promise<{ one: Tab; two: Tab }> {
    const [one, two] = [await Tab.open(storage), await Tab.open(storage)];
    two.edit(80);
    one.edit(70);
    one.autosave.save();
    two.autosave.look();
    expect(two.report).toMatchObject({
      status: 'asking',
      notes: [{ choices: ['other-tab', 'this-plan', 'save-file'] }],
    });
    expect(two.minutes).toBe(80);
    return { one, two };
  }

  it('where both have changes, the later one saves to a copy alone until a person chooses', async () => {
    const { one, two } = await apart();
    expect(minutesIn(storage)).toEqual([70, 80]);
    two.edit(85);
    wait();
    one.edit(71);
    wait();
    two.autosave.look();
    expect(minutesIn(storage)).toEqual([71, 85]);
    two.autosave.choose('save-file');
    expect(two.planFiles).toHaveLength(1);
    expect(two.report.status).toBe('asking');
    // Killed here, both are there at the next visit.
    const next = await Tab.open(storage);
    expect(next.minutes).toBe(71);
    expect(next.report.copies).toHaveLength(1);
  });

  it('the other’s can be taken, and this one’s stays a copy', async () => {
    const { one, two } = await apart();
    two.edit(85);
    one.edit(71);
    one.autosave.save();
    two.autosave.choose('other-tab');
    expect(two.minutes).toBe(71);
    expect(minutesIn(storage)).toEqual([71, 85]);
    expect(two.report).toMatchObject({ status: 'saved', copies: [{ name: 'One bed' }] });
    two.edit(90);
    wait();
    one.autosave.look();
    expect(one.minutes).toBe(90);
  });

  it('this one’s can be kept, and the other’s becomes a copy', async () => {
    const { one, two } = await apart();
    two.autosave.choose('this-plan');
    expect(minutesIn(storage)).toEqual([80, 70]);
    expect(two.notes).toEqual(['replaced']);
    one.autosave.look();
    expect(one.minutes).toBe(80);
    expect(one.notes).toEqual(['other-tab']);
    expect(one.report.copies).toHaveLength(1);
  });

  it('notices without being told, before it writes', async () => {
    const [one, two] = [await Tab.open(storage), await Tab.open(storage)];
    one.edit(70);
    two.edit(80);
    wait();
    expect([...minutesIn(storage)].sort()).toEqual([70, 80]);
    expect([one, two].filter(({ report }) => report.status === 'asking')).toHaveLength(1);
  });

  it('counts what is being typed as a change', async () => {
    const [one, two] = [await Tab.open(storage), await Tab.open(storage)];
    two.drafts?.put({}, 'Note', 'half a sentence');
    one.edit(70);
    wait();
    two.autosave.look();
    expect(two.minutes).toBeUndefined();
    expect(two.notes).toEqual(['conflict']);
  });

  it('says so where a writing of its own was overwritten by a tab that had not seen it', async () => {
    const [one, two] = [await Tab.open(storage), await Tab.open(storage)];
    one.edit(70);
    one.autosave.save();
    const ones = storage.getItem(KEY) ?? '';
    // Another process writes in the same moment, before word of it gets there.
    storage.removeItem(KEY);
    two.edit(80);
    two.autosave.save();
    expect(storage.getItem(KEY)).not.toBe(ones);
    one.autosave.look();
    expect(one.notes).toEqual(['conflict']);
    expect(minutesIn(storage)).toEqual([80, 70]);
  });
});

describe('a link with a plan', () => {
  it('is opened without being saved, over what is saved and without a change to it', async () => {
    await visit();
    const tab = await Tab.open(storage, { link: linked(mixedGarden()) });
    expect(tab.store.view.plan?.name).toBe('Mixed garden');
    expect(tab.report).toMatchObject({
      status: 'asking',
      notes: [{ code: 'link', choices: ['this-plan', 'saved-plan', 'save-file'] }],
    });
    expect(minutesIn(storage)).toEqual([70]);
    tab.autosave.choose('saved-plan');
    expect(tab.minutes).toBe(70);
    expect(tab.leftLink).toBe(1);
    expect(storage.length).toBe(1);
  });

  it('goes into a copy where it is changed before anybody says yes', async () => {
    await visit();
    const link = { ...oneBed(), name: 'From afar' };
    const tab = await Tab.open(storage, { link: linked(link) });
    tab.edit(33);
    wait();
    expect(minutesIn(storage)).toEqual([70, 33]);
    const next = await Tab.open(storage);
    expect(next.report.copies).toMatchObject([{ name: 'From afar' }]);
    tab.autosave.choose('this-plan');
    expect(minutesIn(storage)).toEqual([33, 70]);
    expect(tab.leftLink).toBe(1);
    tab.edit(34);
    wait();
    expect(minutesIn(storage)).toEqual([34, 70]);
  });

  it('is just opened where it is the saved plan', async () => {
    await visit();
    const saved = savedPlanIn(storage.getItem(KEY) ?? '');
    const tab = await Tab.open(storage, { link: linked(saved?.plan ?? '') });
    expect(tab.notes).toEqual(['restored']);
    expect(tab.leftLink).toBe(1);
  });

  it('can be left for the page’s own', async () => {
    const tab = await Tab.open(storage, { link: linked(mixedGarden()) });
    tab.autosave.choose('own-plan');
    expect(tab.store.view.plan?.name).toBe('One bed');
    expect(tab.notes).toEqual([]);
    expect(storage.length).toBe(0);
  });

  it.each([
    ['cut short', () => Promise.reject(new LinkError('damaged')), { code: 'damaged' }],
    ['no plan', () => linked('{"format":"x"}'), { faults: expect.arrayContaining([expect.anything()]) }],
    ['no JSON', () => linked('{'), { faults: [expect.anything()] }],
  ])('is refused, and the note says why: %s', async (_, link, fault) => {
    await visit();
    const tab = await Tab.open(storage, { link: link() });
    expect(tab.minutes).toBe(70);
    expect(tab.note('bad-link')).toMatchObject({ fault });
    expect(tab.store.view.faults).toEqual([]);
  });

  it('says whether its checksum was there', async () => {
    const tab = await Tab.open(storage, { link: linked(mixedGarden(), false) });
    expect(tab.note('link')).toMatchObject({ isChecked: false });
    await tab.autosave.openLink(linked(oneBed()));
    expect(tab.note('link')).toMatchObject({ isChecked: true });
  });

  it('may be followed within the page, and makes no copy of what is saved', async () => {
    const tab = await Tab.open(storage);
    tab.edit(70);
    await tab.autosave.openLink(linked(mixedGarden()));
    expect(tab.store.view.plan?.name).toBe('Mixed garden');
    expect(minutesIn(storage)).toEqual([70]);
    await tab.autosave.openLink(linked('{'));
    expect(tab.store.view.plan?.name).toBe('Mixed garden');
    expect(tab.notes).toEqual(['link', 'bad-link']);
  });

  it('can be saved as a file where the page saves nothing', async () => {
    const tab = await Tab.open(storage, { link: linked(mixedGarden()), savesPlans: false });
    expect(tab.report).toMatchObject({
      status: 'off',
      notes: [{ canSave: false, choices: ['save-file', 'own-plan', 'close'] }],
    });
    tab.edit(70);
    wait();
    expect(storage.length).toBe(0);
  });
});

describe('a mirror that reached the disk sooner', () => {
  function fakeMirror(texts: Map<string, string>): StorageMirror {
    return {
      all: () => Promise.resolve(new Map(texts)),
      set: (key, text) => texts.set(key, text),
      remove: (key) => texts.delete(key),
      open: () => undefined,
      close: () => undefined,
    };
  }

  it('is taken where the browser was killed before the rest was on the disk', async () => {
    const texts = new Map<string, string>();
    const tab = await Tab.open(storage, { mirror: fakeMirror(texts) });
    tab.edit(70);
    wait();
    const early = storage.getItem(KEY) ?? '';
    tab.edit(80);
    wait();
    storage.setItem(KEY, early);
    const next = await Tab.open(storage, { mirror: fakeMirror(texts) });
    expect(next.minutes).toBe(80);
    expect(minutesIn(storage)).toEqual([80]);
    storage.clear();
    expect((await Tab.open(storage, { mirror: fakeMirror(texts) })).minutes).toBe(80);
  });

  it('helps out where the rest is damaged, and brings copies back', async () => {
    const texts = new Map<string, string>();
    const mirror = fakeMirror(texts);
    const tab = await Tab.open(storage, { mirror });
    tab.edit(70);
    wait();
    tab.store.openText(textOf(mixedGarden()));
    wait();
    storage.clear();
    storage.setItem(KEY, 'garbage');
    const next = await Tab.open(storage, { mirror });
    expect(next.store.view.plan?.name).toBe('Mixed garden');
    expect(next.notes).toEqual(['damaged', 'restored']);
    expect(next.report.copies.map(({ name }) => name).sort()).toEqual(['One bed', undefined]);
  });
});

describe('autosave that is stopped while it still waits', () => {
  it('opens nothing and says nothing any more', async () => {
    await visit(70);
    let release = () => {};
    const slow: StorageMirror = {
      all: () => new Promise((resolve) => (release = () => resolve(new Map()))),
      set: () => undefined,
      remove: () => undefined,
      open: () => undefined,
      close: () => undefined,
    };
    const tab = new Tab(storage, { mirror: slow });
    tab.store.openPlan(mixedGarden(), 'autosave');
    tab.autosave.stop();
    const { report } = tab;
    release();
    await tab.started;
    expect(tab.store.view.plan?.name).toBe('Mixed garden');
    expect(tab.report).toBe(report);
  });
});

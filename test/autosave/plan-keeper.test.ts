import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { KeptCopy } from '../../src/autosave/kept-copy.ts';
import { keptIn } from '../../src/autosave/kept-writer.ts';
import type { Plan } from '../../src/plan/schema/plan-schema.ts';
import { mixedGarden, oneBed } from '../support/small-plans.ts';
import { FakeStorage } from './fake-storage.ts';
import { KEY, minutesIn, Tab } from './kept-tab.ts';

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
const linked = (plan: Plan | string) => Promise.resolve(typeof plan === 'string' ? plan : textOf(plan));

/** A tab that has set 70 minutes, which are kept, and is closed. */
async function visit(minutes = 70): Promise<void> {
  const tab = await Tab.open(storage);
  tab.edit(minutes);
  tab.keeper.stop();
}

describe('a plan that is kept', () => {
  it('is not written before it is changed, then within 300 ms, and at once where the tab goes', async () => {
    const tab = await Tab.open(storage);
    wait(10_000);
    expect(storage.length).toBe(0);
    tab.edit(70);
    expect(storage.length).toBe(0);
    wait();
    expect(minutesIn(storage)).toEqual([70]);
    tab.edit(80);
    tab.keeper.write();
    expect(minutesIn(storage)).toEqual([80]);
    expect(tab.keeping).toEqual({ status: 'kept', notes: [], putAside: [], typed: [] });
  });

  it('is written every 300 ms while edits follow one another without a pause', async () => {
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
    expect(next.text('returned')).toBe('This is the plan as it was left in this browser, 7 June 2027 at 08:00.');
    expect(next.keeping.notes[0]?.choices).toEqual(['page-plan', 'close']);
    next.keeper.choose('close', 'returned');
    expect(next.notes).toEqual([]);
    expect((await Tab.open(storage, { base: 'other.runnel.json' })).text('returned')).toMatch(
      /another plan of its own/,
    );
    expect((await Tab.open(storage, { ownPlan: undefined })).keeping.notes[0]?.choices).toEqual(['close']);
  });

  it('makes way for the page’s own, put aside, and can be brought back', async () => {
    await visit();
    const tab = await Tab.open(storage);
    tab.keeper.choose('page-plan');
    expect(tab.minutes).toBeUndefined();
    expect(tab.notes).toEqual(['page-plan']);
    expect(tab.keeping.putAside).toMatchObject([{ name: 'One bed', saved: '2027-06-07T08:00:00.000Z' }]);
    expect((await Tab.open(storage)).minutes).toBeUndefined();
    tab.edit(20);
    wait();
    tab.keeper.choose('bring-back', tab.keeping.putAside[0]?.id);
    expect(tab.minutes).toBe(70);
    expect(minutesIn(storage)).toEqual([70, 20]);
    expect(tab.keeping.putAside).toHaveLength(1);
    const [aside] = tab.keeping.putAside;
    tab.keeper.choose('save-aside', aside?.id);
    expect(keptIn(tab.files[0])?.plan.choices?.['beds']?.['2027-06-07']?.minutes).toBe(20);
    tab.keeper.choose('throw-away', aside?.id);
    expect(minutesIn(storage)).toEqual([70]);
    expect(tab.keeping.putAside).toEqual([]);
  });

  it('is put aside where a person opens a file, which is kept at once', async () => {
    await visit();
    const tab = await Tab.open(storage);
    tab.edit(75);
    tab.store.openText(textOf(mixedGarden()));
    wait(0);
    expect(keptIn(storage.getItem(KEY) ?? '')?.plan.name).toBe('Mixed garden');
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
    expect(tab.notes).toEqual(['page-plan']);
    tab.keeper.choose('kept-plan');
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
    expect(tab.keeping.status).toBe('off');
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

describe('storage that fails', () => {
  it.each([
    ['{"format":"runnel-kept","version":1,', /cannot be read .*damaged\)\. It is put aside/],
    ['garbage', /damaged/],
    [JSON.stringify({ format: 'runnel-kept', version: 9 }), /newer edition/],
  ])('is put aside as a file where it is corrupt: %s', async (text, words) => {
    storage.setItem(KEY, text);
    const tab = await Tab.open(storage);
    expect(tab.store.view.plan?.name).toBe('One bed');
    expect(tab.store.view.faults).toEqual([]);
    expect(tab.text('damaged')).toMatch(words);
    expect(tab.keeping.putAside).toMatchObject([{ name: undefined }]);
    tab.keeper.choose('save-aside', tab.keeping.putAside[0]?.id);
    expect(tab.files).toEqual([text]);
    tab.edit(70);
    wait();
    expect(minutesIn(storage)).toEqual([70, undefined]);
  });

  it('is put aside where it becomes corrupt under the hand', async () => {
    const tab = await Tab.open(storage);
    tab.edit(70);
    wait();
    storage.setItem(KEY, 'garbage');
    tab.keeper.look();
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
    expect(tab.keeping.status).toBe('not-kept');
    expect(tab.text('not-kept')).toMatch(/^This browser’s storage is full: your changes are not being kept\. Save/);
    expect(minutesIn(storage)).toEqual([70]);
    expect(tab.edit(90)).toBe(true);
    wait();
    tab.keeper.choose('save');
    expect(tab.saved[0]?.choices?.['beds']?.['2027-06-07']?.minutes).toBe(90);
    storage.quota = 1e6;
    wait(3000);
    expect(minutesIn(storage)).toEqual([90]);
    expect(tab.keeping).toMatchObject({ status: 'kept', notes: [] });
  });

  it('lets editing go on where it is forbidden, and keeps the plan once it is not', async () => {
    await visit();
    storage.isForbidden = true;
    const tab = await Tab.open(storage);
    expect(tab.store.view.plan?.name).toBe('One bed');
    expect(tab.text('not-kept')).toMatch(/^This browser does not let the page keep anything/);
    tab.edit(80);
    wait();
    expect(tab.minutes).toBe(80);
    storage.isForbidden = false;
    tab.keeper.choose('retry');
    expect(minutesIn(storage)).toEqual([80, 70]);
    expect(tab.notes).toEqual(['replaced']);
  });

  it('may be null', async () => {
    Object.assign(storage, { access: () => null });
    const tab = await Tab.open(storage);
    tab.edit(80);
    wait();
    expect(tab.keeping.status).toBe('not-kept');
  });

  it('overwrites nothing where there is no room to put it aside', async () => {
    await visit();
    const tab = await Tab.open(storage);
    tab.store.openText(textOf(mixedGarden()));
    storage.quota = (storage.getItem(KEY)?.length ?? 0) + KEY.length;
    wait();
    expect(tab.keeping.status).toBe('not-kept');
    expect(minutesIn(storage)).toEqual([70]);
  });
});

describe('two tabs on one plan', () => {
  it('where one is idle, it takes the other’s changes over and says so', async () => {
    const [one, two] = [await Tab.open(storage), await Tab.open(storage)];
    one.edit(70);
    wait();
    two.keeper.look();
    expect(two.minutes).toBe(70);
    expect(two.notes).toEqual(['other-tab']);
    two.edit(80);
    wait();
    one.keeper.look();
    expect(one.minutes).toBe(80);
    expect(minutesIn(storage)).toEqual([80]);
  });

  it('where an idle one has missed some of them, it takes the last', async () => {
    const [one, two] = [await Tab.open(storage), await Tab.open(storage)];
    two.edit(60);
    wait();
    one.keeper.look();
    for (const minutes of [70, 80, 90]) {
      one.edit(minutes);
      wait();
    }
    two.keeper.look();
    expect(two.minutes).toBe(90);
    expect(two.notes).toEqual(['other-tab']);
  });

  /** Both have changes that the other has not seen. */
  async function apart(): Promise<{ one: Tab; two: Tab }> {
    const [one, two] = [await Tab.open(storage), await Tab.open(storage)];
    two.edit(80);
    one.edit(70);
    one.keeper.write();
    two.keeper.look();
    expect(two.keeping).toMatchObject({ status: 'asking', notes: [{ choices: ['other-tab', 'this-plan', 'save'] }] });
    expect(two.minutes).toBe(80);
    return { one, two };
  }

  it('where both have changes, the later one writes aside alone until a person chooses', async () => {
    const { one, two } = await apart();
    expect(minutesIn(storage)).toEqual([70, 80]);
    two.edit(85);
    wait();
    one.edit(71);
    wait();
    two.keeper.look();
    expect(minutesIn(storage)).toEqual([71, 85]);
    two.keeper.choose('save');
    expect(two.saved).toHaveLength(1);
    expect(two.keeping.status).toBe('asking');
    // Killed here, both are there at the next visit.
    const next = await Tab.open(storage);
    expect(next.minutes).toBe(71);
    expect(next.keeping.putAside).toHaveLength(1);
  });

  it('the other’s can be taken, and this one’s stays aside', async () => {
    const { one, two } = await apart();
    two.edit(85);
    one.edit(71);
    one.keeper.write();
    two.keeper.choose('other-tab');
    expect(two.minutes).toBe(71);
    expect(minutesIn(storage)).toEqual([71, 85]);
    expect(two.keeping).toMatchObject({ status: 'kept', putAside: [{ name: 'One bed' }] });
    two.edit(90);
    wait();
    one.keeper.look();
    expect(one.minutes).toBe(90);
  });

  it('this one’s can be kept, and the other’s goes aside', async () => {
    const { one, two } = await apart();
    two.keeper.choose('this-plan');
    expect(minutesIn(storage)).toEqual([80, 70]);
    expect(two.notes).toEqual(['replaced']);
    one.keeper.look();
    expect(one.minutes).toBe(80);
    expect(one.notes).toEqual(['other-tab']);
    expect(one.keeping.putAside).toHaveLength(1);
  });

  it('notices without being told, before it writes', async () => {
    const [one, two] = [await Tab.open(storage), await Tab.open(storage)];
    one.edit(70);
    two.edit(80);
    wait();
    expect([...minutesIn(storage)].sort()).toEqual([70, 80]);
    expect([one, two].filter(({ keeping }) => keeping.status === 'asking')).toHaveLength(1);
  });

  it('counts what is being typed as a change', async () => {
    const [one, two] = [await Tab.open(storage), await Tab.open(storage)];
    two.typed?.put({}, 'Note', 'half a sentence');
    one.edit(70);
    wait();
    two.keeper.look();
    expect(two.minutes).toBeUndefined();
    expect(two.notes).toEqual(['two-tabs']);
  });

  it('says so where a writing of its own was overwritten by a tab that had not seen it', async () => {
    const [one, two] = [await Tab.open(storage), await Tab.open(storage)];
    one.edit(70);
    one.keeper.write();
    const ones = storage.getItem(KEY) ?? '';
    // Another process writes in the same moment, before word of it gets there.
    storage.removeItem(KEY);
    two.edit(80);
    two.keeper.write();
    expect(storage.getItem(KEY)).not.toBe(ones);
    one.keeper.look();
    expect(one.notes).toEqual(['two-tabs']);
    expect(minutesIn(storage)).toEqual([80, 70]);
  });
});

describe('a link with a plan', () => {
  it('is opened without being kept, over what is kept and without a change to it', async () => {
    await visit();
    const tab = await Tab.open(storage, { link: linked(mixedGarden()) });
    expect(tab.store.view.plan?.name).toBe('Mixed garden');
    expect(tab.keeping).toMatchObject({
      status: 'asking',
      notes: [{ kind: 'link', choices: ['this-plan', 'kept-plan', 'save'] }],
    });
    expect(minutesIn(storage)).toEqual([70]);
    tab.keeper.choose('kept-plan');
    expect(tab.minutes).toBe(70);
    expect(tab.leftLink).toBe(1);
    expect(storage.length).toBe(1);
  });

  it('goes aside where it is changed before anybody says yes', async () => {
    await visit();
    const link = { ...oneBed(), name: 'From afar' };
    const tab = await Tab.open(storage, { link: linked(link) });
    tab.edit(33);
    wait();
    expect(minutesIn(storage)).toEqual([70, 33]);
    const next = await Tab.open(storage);
    expect(next.keeping.putAside).toMatchObject([{ name: 'From afar' }]);
    tab.keeper.choose('this-plan');
    expect(minutesIn(storage)).toEqual([33, 70]);
    expect(tab.leftLink).toBe(1);
    tab.edit(34);
    wait();
    expect(minutesIn(storage)).toEqual([34, 70]);
  });

  it('is just opened where it is the plan that is kept', async () => {
    await visit();
    const kept = keptIn(storage.getItem(KEY) ?? '');
    const tab = await Tab.open(storage, { link: linked(kept?.plan ?? '') });
    expect(tab.notes).toEqual(['returned']);
    expect(tab.leftLink).toBe(1);
  });

  it('can be left for the page’s own', async () => {
    const tab = await Tab.open(storage, { link: linked(mixedGarden()) });
    tab.keeper.choose('page-plan');
    expect(tab.store.view.plan?.name).toBe('One bed');
    expect(tab.notes).toEqual([]);
    expect(storage.length).toBe(0);
  });

  it.each([
    ['cut short', () => Promise.reject(new Error('The link is cut short.')), /not opened\. The link is cut short\./],
    ['no plan', () => linked('{"format":"x"}'), /not a plan that can be read/],
    ['no JSON', () => linked('{'), /not a plan that can be read/],
  ])('is refused in words: %s', async (_, link, words) => {
    await visit();
    const tab = await Tab.open(storage, { link: link() });
    expect(tab.minutes).toBe(70);
    expect(tab.text('bad-link')).toMatch(words);
    expect(tab.store.view.faults).toEqual([]);
  });

  it('may be followed within the page, and puts nothing aside that is kept', async () => {
    const tab = await Tab.open(storage);
    tab.edit(70);
    await tab.keeper.openLink(linked(mixedGarden()));
    expect(tab.store.view.plan?.name).toBe('Mixed garden');
    expect(minutesIn(storage)).toEqual([70]);
    await tab.keeper.openLink(linked('{'));
    expect(tab.store.view.plan?.name).toBe('Mixed garden');
    expect(tab.notes).toEqual(['link', 'bad-link']);
  });

  it('can be saved as a file where the page keeps nothing', async () => {
    const tab = await Tab.open(storage, { link: linked(mixedGarden()), isKept: false });
    expect(tab.keeping).toMatchObject({ status: 'off', notes: [{ choices: ['save', 'page-plan', 'close'] }] });
    tab.edit(70);
    wait();
    expect(storage.length).toBe(0);
  });
});

describe('a copy that reached the disk sooner', () => {
  function fakeCopy(texts: Map<string, string>): KeptCopy {
    return {
      all: () => Promise.resolve(new Map(texts)),
      set: (key, text) => texts.set(key, text),
      remove: (key) => texts.delete(key),
    };
  }

  it('is taken where the browser was killed before the rest was on the disk', async () => {
    const texts = new Map<string, string>();
    const tab = await Tab.open(storage, { copy: fakeCopy(texts) });
    tab.edit(70);
    wait();
    const early = storage.getItem(KEY) ?? '';
    tab.edit(80);
    wait();
    storage.setItem(KEY, early);
    const next = await Tab.open(storage, { copy: fakeCopy(texts) });
    expect(next.minutes).toBe(80);
    expect(minutesIn(storage)).toEqual([80]);
    storage.clear();
    expect((await Tab.open(storage, { copy: fakeCopy(texts) })).minutes).toBe(80);
  });

  it('helps out where the rest is damaged, and brings back what was put aside', async () => {
    const texts = new Map<string, string>();
    const copy = fakeCopy(texts);
    const tab = await Tab.open(storage, { copy });
    tab.edit(70);
    wait();
    tab.store.openText(textOf(mixedGarden()));
    wait();
    storage.clear();
    storage.setItem(KEY, 'garbage');
    const next = await Tab.open(storage, { copy });
    expect(next.store.view.plan?.name).toBe('Mixed garden');
    expect(next.notes).toEqual(['damaged', 'returned']);
    expect(next.keeping.putAside.map(({ name }) => name).sort()).toEqual(['One bed', undefined]);
  });
});

describe('a keeper that is stopped while it still waits', () => {
  it('opens nothing and says nothing any more', async () => {
    await visit(70);
    let release = () => {};
    const slow: KeptCopy = {
      all: () => new Promise((resolve) => (release = () => resolve(new Map()))),
      set: () => undefined,
      remove: () => undefined,
    };
    const tab = new Tab(storage, { copy: slow });
    tab.store.openPlan(mixedGarden(), 'keeper');
    tab.keeper.stop();
    const { keeping } = tab;
    release();
    await tab.started;
    expect(tab.store.view.plan?.name).toBe('Mixed garden');
    expect(tab.keeping).toBe(keeping);
  });
});

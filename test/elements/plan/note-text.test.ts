import { describe, expect, it } from 'vitest';
import type { AutosaveNote } from '../../../src/autosave/report.ts';
import { noteText } from '../../../src/elements/plan/note-text.ts';
import { autosave } from '../../../src/language/en/autosave.ts';
import { readerFor } from '../../../src/language/reader.ts';
import { checkPlan } from '../../../src/plan/reading/check-plan.ts';
import { oneBed } from '../../support/small-plans.ts';

const us = readerFor('en-US', 'us');
const refused = checkPlan({ ...oneBed(), name: 5 });
const faults = refused.ok ? [] : refused.faults;
const saved = '2027-06-07T08:00:00.000Z';

const NOTES: readonly AutosaveNote[] = [
  { code: 'restored', saved, hasOtherBase: false, choices: [] },
  { code: 'restored', saved, hasOtherBase: true, choices: [] },
  { code: 'own-plan', savedPlan: 'copy', choices: [] },
  { code: 'own-plan', savedPlan: 'saved', choices: [] },
  { code: 'replaced', choices: [] },
  { code: 'damaged', damage: { code: 'unreadable' }, choices: [] },
  { code: 'damaged', damage: { code: 'no-heading' }, choices: [] },
  { code: 'damaged', damage: { code: 'newer' }, choices: [] },
  { code: 'damaged', damage: { code: 'plan', faults }, choices: [] },
  { code: 'not-saved', fault: 'full', choices: [] },
  { code: 'not-saved', fault: 'forbidden', choices: [] },
  { code: 'other-tab', isChosen: false, choices: [] },
  { code: 'other-tab', isChosen: true, choices: [] },
  { code: 'conflict', choices: [] },
  { code: 'link', canSave: true, isChecked: true, lacksYears: false, choices: [] },
  { code: 'link', canSave: true, isChecked: false, lacksYears: false, choices: [] },
  { code: 'link', canSave: false, isChecked: true, lacksYears: false, choices: [] },
  { code: 'link', canSave: true, isChecked: true, lacksYears: true, choices: [] },
  { code: 'link', canSave: false, isChecked: false, lacksYears: false, choices: [] },
  { code: 'bad-link', fault: { code: 'damaged' }, choices: [] },
  { code: 'bad-link', fault: { faults }, choices: [] },
];

describe('what a note of autosave says', () => {
  it('is something else for each', () => {
    expect(new Set(NOTES.map((note) => noteText(note, us))).size).toBe(NOTES.length);
  });

  it('writes the instant as the reader does', () => {
    const note: AutosaveNote = { code: 'restored', saved, hasOtherBase: false, choices: [] };
    expect(noteText(note, us)).toMatch(/June 7, 2027/);
    expect(noteText(note, readerFor('en-GB', 'metric'))).toMatch(/7 June 2027/);
  });

  it('says of a plan with faults what the first one is', () => {
    expect(faults.length).toBeGreaterThan(0);
    const { unreadable } = autosave.damage;
    const text = noteText({ code: 'damaged', damage: { code: 'plan', faults }, choices: [] }, us);
    expect(text.length).toBeGreaterThan(autosave.damaged('').length);
    expect(text).not.toContain(unreadable);
  });
});

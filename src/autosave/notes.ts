/** Notes for a person: which choices each offers, and which go when another comes. */
import type { AutosaveChoice, AutosaveNote, AutosaveNoteCode, NoteValues } from './report.ts';
import type { AutosaveState } from './state.ts';

type Notes = AutosaveState['notes'];

const CHOICES: Readonly<Record<AutosaveNoteCode, readonly AutosaveChoice[]>> = {
  restored: ['close'],
  'own-plan': ['close'],
  replaced: ['close'],
  damaged: ['close'],
  'not-saved': ['save-file', 'retry'],
  'other-tab': ['close'],
  conflict: ['other-tab', 'this-plan', 'save-file'],
  link: ['this-plan', 'save-file'],
  'bad-link': ['close'],
};

/** Those that say how the plan on screen came there. */
const ORIGINS: readonly AutosaveNoteCode[] = ['restored', 'own-plan', 'replaced', 'other-tab'];

/** A note in the place of one of its code. `choices`: left out, those of every note of its code. */
export function withNote(notes: Notes, values: NoteValues, choices = CHOICES[values.code]): Notes {
  const note: AutosaveNote = { ...values, choices };
  const index = notes.findIndex(({ code }) => code === values.code);
  return index < 0 ? [...notes, note] : notes.with(index, note);
}

export function withoutNotes(notes: Notes, ...codes: readonly AutosaveNoteCode[]): Notes {
  return notes.some(({ code }) => codes.includes(code)) ? notes.filter(({ code }) => !codes.includes(code)) : notes;
}

/** Another plan is on screen: how the one before came there is of no interest any more. */
export function withoutOrigin(notes: Notes, ...others: readonly AutosaveNoteCode[]): Notes {
  return withoutNotes(notes, ...ORIGINS, ...others);
}

export function hasNote(notes: Notes, code: AutosaveNoteCode): boolean {
  return notes.some((note) => note.code === code);
}

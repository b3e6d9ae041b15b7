/** What a note of autosave says to a reader. */
import type { AutosaveNote, LinkFault } from '../../autosave/report.ts';
import type { SavedPlanDamage } from '../../autosave/saved-plan.ts';
import { describeFault } from '../../language/describe-fault.ts';
import { autosaveWords } from '../../language/en/autosave.ts';
import { formatFor } from '../../language/format/format.ts';
import type { Reader } from '../../language/reader.ts';

export function noteText(note: AutosaveNote, reader: Reader): string {
  const words = autosaveWords(reader.language);
  const format = formatFor(reader);
  switch (note.code) {
    case 'restored':
      return (note.hasOtherBase ? words.restoredFromOther : words.restored)(format, note.saved);
    case 'own-plan':
      return note.savedPlan === 'copy' ? words.ownPlan : words.ownPlanOpened;
    case 'damaged':
      return words.damaged(damageText(note.damage, reader));
    case 'not-saved':
      return words[note.fault];
    case 'other-tab':
      return (note.isOnPage ? words.onPage : words)[note.isChosen ? 'otherTabChosen' : 'otherTab'];
    case 'conflict':
      return (note.isOnPage ? words.onPage : words).conflict;
    case 'link':
      return aboutLink(note, reader);
    case 'bad-link':
      return words.badLink(linkText(note.fault, reader));
    default:
      return words[note.code];
  }
}

function aboutLink(
  { canSave, isChecked, lacksYears }: Extract<AutosaveNote, { code: 'link' }>,
  reader: Reader,
): string {
  const words = autosaveWords(reader.language);
  return [
    canSave ? words.link : words.linkOnly,
    ...(isChecked ? [] : [words.linkUnchecked]),
    ...(lacksYears ? [words.linkLacksYears] : []),
  ].join(' ');
}

function damageText(damage: SavedPlanDamage, reader: Reader): string {
  const words = autosaveWords(reader.language).damage;
  if (damage.code !== 'plan') return words[damage.code];
  const [fault] = damage.faults;
  return fault === undefined ? '' : words.plan(describeFault(fault, reader));
}

function linkText(fault: LinkFault, reader: Reader): string {
  const words = autosaveWords(reader.language);
  if ('code' in fault) return words.linkErrors[fault.code];
  const [first] = fault.faults;
  return first === undefined ? '' : words.badPlan(describeFault(first, reader));
}

/** What is said of a plan that is saved between visits. */
import { area } from '../area.ts';
import type { FaultText } from '../describe-fault.ts';
import type { Format } from '../format/format.ts';

export const autosave = {
  title: 'Saving the plan',
  /** `saved`: an instant, ISO 8601. */
  restored: ({ instant }: Format, saved: string) =>
    `This is the plan as you left it in this browser, ${instant(saved)}.`,
  restoredFromOther: ({ instant }: Format, saved: string) =>
    `This is the plan as you left it in this browser, ${instant(saved)}. Since then the page has another plan of its own.`,
  ownPlan: 'This is the page’s own plan. Yours is still in this browser, below.',
  ownPlanOpened: 'The page has opened a plan of its own. Yours is still saved in this browser.',
  replaced: 'This plan is now the one saved in this browser. The one before is below.',
  damaged: (why: string) =>
    `The plan saved in this browser cannot be read${why}. It is below; save it as a file to keep it.`,
  /** Why, within that sentence. */
  damage: {
    unreadable: ' (the text is damaged)',
    'no-heading': ' (its heading is damaged)',
    newer: ' (a newer version of this page saved it)',
    plan: ({ where, value, expected }: FaultText) => ` (${where}: ${value}; expected ${expected})`,
  },
  full: 'This browser’s storage is full: your changes are not saved. Save the plan as a file, so that nothing is lost.',
  forbidden:
    'This browser does not let the page save anything: your changes are not saved. Save the plan as a file, so that nothing is lost.',
  otherTab: 'The plan was changed in another tab. Its changes are shown here.',
  otherTabChosen: 'This is the other tab’s plan. This tab’s is below.',
  conflict:
    'The plan was changed here and in another tab. Until you choose one, the other tab’s is the saved one, and your changes here go into a copy.',
  /** The same where it is no other tab but another plan of the same page. */
  onPage: {
    otherTab: 'The plan was changed in another place of this page. Its changes are shown here.',
    otherTabChosen: 'This is the plan of the other place on this page. The one from here is below.',
    conflict:
      'Two places of this page save a plan under the same name, and it was changed in both. Until you choose one, the other place’s is the saved one, and your changes here go into a copy.',
    choice: 'Use the other place’s plan',
  },
  link: 'This plan came with a link. It is not saved in this browser yet.',
  linkOnly: 'This plan came with a link. This page does not save it: save it as a file to have it again.',
  linkUnchecked:
    'An earlier version made the link, which does not show whether a letter was changed. Check the plan, or ask for a new link.',
  linkLacksYears:
    'A link leaves out the plan’s years of weather. Gallons and minutes may differ from the sender’s; ask for the plan as a file to have the same.',
  badLink: (why: string) => `The plan in the link was not opened. ${why}`,
  /** Why, where the link itself cannot be read. */
  linkErrors: {
    damaged:
      'The link is cut short, or a letter of it was changed. Copy the whole of it again, or ask for the plan as a file.',
    'too-large': 'The link holds more than 5 MB, which no plan needs. Ask for the plan as a file.',
  },
  /** Why, where the link holds something else than a plan. */
  badPlan: ({ where, value, expected }: FaultText) =>
    `It is not a plan that can be read: ${where} is ${value}; expected ${expected}.`,
  copies: ({ count }: Format, plans: number) =>
    `${count(plans, { one: 'other plan is', other: 'other plans are' })} saved in this browser`,
  copy: ({ instant }: Format, name: string, saved: string) => `“${name}”, changed ${instant(saved)}`,
  damagedCopy: 'A text that cannot be read',
  damagedFile: 'damaged-plan.txt',
  /** `field`: which one it was, as its labels say; empty where that is not known. */
  draft: (field: string) =>
    `You were typing this when the page closed, and it was not entered${field === '' ? '' : ` (${field})`}:`,
  draftText: 'What you were typing',
  copied: 'Copied',
  deleteForGood: 'Delete for good',
  choices: {
    'own-plan': 'Open the page’s own plan',
    'saved-plan': 'Open the saved plan',
    'other-tab': 'Use the other tab’s plan',
    'this-plan': 'Keep this plan',
    'save-file': 'Save this plan as a file',
    retry: 'Try again',
    close: 'Close',
    'restore-copy': 'Open it',
    'save-copy': 'Save as a file',
    'delete-copy': 'Delete',
    'copy-draft': 'Copy',
    'delete-draft': 'Delete',
  },
};

export const autosaveWords = area('autosave', autosave);

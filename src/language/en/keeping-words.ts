/** What is said about a plan that is kept between visits. */
import type { KeepingChoice } from '../../store/keeping.ts';
import type { FaultText } from '../describe-fault.ts';

const ALL_HERE = 'The other one is put aside, below.';

export const keepingWords = {
  title: 'Keeping the plan',
  returned: (when: string) => `This is the plan as it was left in this browser, ${when}.`,
  returnedFromOther: (when: string) =>
    `This is the plan as it was left in this browser, ${when}. The page has another plan of its own since.`,
  pagePlan: 'This is the page’s own plan. Yours is put aside, below.',
  pageOpened: 'The page has opened a plan of its own. Yours is still kept in this browser.',
  replaced: `This plan is now the one that this browser keeps. ${ALL_HERE}`,
  damaged: (fault?: FaultText) =>
    `What this browser had kept cannot be read${fault === undefined ? '' : ` (${fault.where}: ${fault.value}; expected ${fault.expected})`}. It is put aside, below, and can be saved as a file.`,
  full: 'This browser’s storage is full: your changes are not being kept. Save the plan as a file, so that nothing is lost.',
  forbidden:
    'This browser does not let the page keep anything: your changes are not being kept. Save the plan as a file, so that nothing is lost.',
  otherTab: 'The plan was changed in another tab. Its changes are shown here.',
  tookOther: 'This is the other tab’s plan. This tab’s is put aside, below.',
  twoTabs:
    'The plan was changed here and in another tab. Until you choose one, the other tab’s is kept, and what you change here is put aside.',
  link: 'This plan came with a link, and is not kept in this browser yet.',
  linkOnly: 'This plan came with a link, and the page does not keep it. Save it as a file to have it again.',
  badLink: (why: string) => `The plan in the link was not opened. ${why}`,
  linkRefused: ({ where, value, expected }: FaultText) =>
    `It is not a plan that can be read: ${where} is ${value}; expected ${expected}.`,
  putAside: (count: number) =>
    count === 1 ? 'One plan is put aside in this browser' : `${count} plans are put aside in this browser`,
  aside: (name: string, when: string) => `“${name}”, changed ${when}`,
  asideDamaged: 'A text that cannot be read',
  damagedFile: 'damaged-plan.txt',
  surely: 'Throw away for good',
  typed: (of: string) =>
    `This was being typed when the page closed, and was not entered${of === '' ? '' : ` (${of})`}:`,
  typedText: 'What was being typed',
  copied: 'Copied',
  choices: {
    'page-plan': 'Open the page’s own plan',
    'kept-plan': 'Open the one that is kept',
    'other-tab': 'Take the other tab’s',
    'this-plan': 'Keep this one',
    save: 'Save this one as a file',
    retry: 'Try again',
    close: 'Close',
    'bring-back': 'Bring it back',
    'save-aside': 'Save as a file',
    'throw-away': 'Throw away',
    'copy-text': 'Copy it',
    'forget-text': 'Throw away',
  } satisfies Record<KeepingChoice, string>,
} as const;

/** What is printed, and on which paper. */
export const PAPER_KINDS = ['shed', 'weeks', 'season', 'zone', 'review', 'attention'] as const;
export type PaperKind = (typeof PAPER_KINDS)[number];

export const PAPER_SIZES = ['letter', 'a4'] as const;
export type PaperSize = (typeof PAPER_SIZES)[number];

export interface PaperChoice {
  readonly kind: PaperKind;
  /** Week of the season, from 0, with which shed and weeks begin. */
  readonly week: number;
  readonly zone: string | undefined;
  readonly size: PaperSize;
  readonly isAcross: boolean;
}

const MM_PER_INCH = 25.4;

/** ANSI Letter and ISO 216 A4, in inches, upright. */
const SIZES: Readonly<Record<PaperSize, readonly [width: number, height: number]>> = {
  letter: [8.5, 11],
  a4: [210 / MM_PER_INCH, 297 / MM_PER_INCH],
};

export const MARGIN_INCHES = 0.5;

/** Of the sheet as it lies, in inches. */
export function paperInches({ size, isAcross }: PaperChoice): { readonly width: number; readonly height: number } {
  const [short, long] = SIZES[size];
  return isAcross ? { width: long, height: short } : { width: short, height: long };
}

/** Width that print fills, in points. */
export function printedPoints(choice: PaperChoice): number {
  return 72 * (paperInches(choice).width - 2 * MARGIN_INCHES);
}

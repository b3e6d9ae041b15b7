import { contains, type KeptReading } from './kept-plan.ts';

/**
 * Which of two kept texts a visit begins with, where a plan is kept twice: `main`, which is written at once, and `copy`,
 * which is written a little later but reaches the disk sooner. `both`: each has changes that the other lacks.
 */
export function newerKept(main: KeptReading | undefined, copy: KeptReading | undefined): 'main' | 'copy' | 'both' {
  if (copy === undefined || !copy.ok) return 'main';
  if (main === undefined || !main.ok) return 'copy';
  if (contains(main.kept, copy.kept)) return 'main';
  return contains(copy.kept, main.kept) ? 'copy' : 'both';
}

import type { Fault } from '../../plan/reading/fault.ts';
import { planFileWords } from '../shared/words/plan-file-words.ts';

/** The text of a plan file, or why there is none. Rejects only when `signal` ends the wait. */
export async function fetchPlanText(address: string, signal: AbortSignal): Promise<string | Fault> {
  try {
    const response = await fetch(address, { signal });
    return response.ok ? await response.text() : planFileWords.refused(address, response.status);
  } catch (error) {
    if (signal.aborted) throw error;
    return planFileWords.unreachable(address);
  }
}

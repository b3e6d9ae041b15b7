import type { Fault } from '../../../plan/reading/fault.ts';

/** Why a plan file could not be fetched. */
export const planFileWords = {
  unreachable: (address: string): Fault => ({
    path: '',
    where: 'The plan file',
    value: address,
    expected: 'a file that can be reached: check the address and the connection, then load the page again',
  }),
  refused: (address: string, status: number): Fault => ({
    path: '',
    where: 'The plan file',
    value: address,
    expected: `a file that the server gives out; it answered ${status}`,
  }),
} as const;

import { sendKeys } from '@web/test-runner-commands';

/** Presses the last key while the ones before it are held down. */
export async function chord(...keys: string[]): Promise<void> {
  const held = keys.slice(0, -1);
  for (const key of held) await sendKeys({ down: key });
  await sendKeys({ press: keys.at(-1) ?? '' });
  for (const key of held.reverse()) await sendKeys({ up: key });
}

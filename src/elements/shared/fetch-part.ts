/** Fetches a part of the kit's code; undefined where it cannot be had, for want of a connection. */
export async function fetchPart<Part>(fetch: () => Promise<Part>): Promise<Part | undefined> {
  try {
    return await fetch();
  } catch (error) {
    // A fault of the page's own, not of the network, must not hide.
    if (!(error instanceof TypeError)) throw error;
    return undefined;
  }
}

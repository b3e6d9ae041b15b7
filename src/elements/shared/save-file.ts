/** Hands a text, or the octets of a file, to the reader as a file. */
export function saveFile(name: string, content: string | Uint8Array<ArrayBuffer>, type: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // Not at once: some browsers fetch it only after this returns.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** A plan's name as every system takes it for a file's. */
export function fileNameOf(name: string): string {
  return (
    name
      .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
      .replaceAll(/^-|-$/g, '')
      .toLowerCase() || 'plan'
  );
}

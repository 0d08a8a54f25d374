/** Files in and out of the page, by the browser's own means. */

/** Asks for one file. @returns undefined when the person thinks better of it */
export function pickFile(accept: string): Promise<File | undefined> {
  return new Promise((resolve) => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = accept;
    input.addEventListener('change', () => resolve(input.files?.[0]));
    input.addEventListener('cancel', () => resolve(undefined));
    input.click();
  });
}

/** Hands a text to the person as a file. */
export function offerDownload(name: string, text: string, type: string): void {
  const url = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The browser has taken the address by the time the event loop comes round.
  setTimeout(() => URL.revokeObjectURL(url), 0);
}

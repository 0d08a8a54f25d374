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

/** Hands a file to the person. @param content its text, of a media type, or what holds both */
export function offerDownload(name: string, ...content: readonly [text: string, type: string] | readonly [Blob]): void {
  const [held, type = ''] = content;
  const url = URL.createObjectURL(typeof held === 'string' ? new Blob([held], { type }) : held);
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The browser has taken the address by the time the event loop comes round.
  setTimeout(() => URL.revokeObjectURL(url), 0);
}

/** Copying a text, by whatever means the browser allows. */

/**
 * @param field holds the text; it is marked when copying is left to the person
 * @returns whether the text is on the clipboard
 */
export async function copyText(field: HTMLInputElement | HTMLTextAreaElement): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(field.value);
    return true;
  } catch {
    // No permission, no secure context, or no such means at all.
  }
  field.focus();
  field.select();
  try {
    return document.execCommand('copy');
  } catch {
    return false;
  }
}

/** One file that makes a version of the page. */
export interface KeptFile {
  /** From the folder of the page; "./" is the page itself. */
  readonly address: string;
  /** Hash of the content as the browser's fetch takes it, "sha256-…" (W3C Subresource Integrity). */
  readonly integrity: string;
}

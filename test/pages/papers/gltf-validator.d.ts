/** What the tests use of the validator, which comes without types. */
declare module 'gltf-validator' {
  export interface Report {
    readonly mimeType: string;
    readonly issues: {
      readonly numErrors: number;
      readonly messages: readonly { readonly code: string; readonly message: string; readonly severity: number }[];
    };
    readonly info: { readonly totalTriangleCount: number };
  }
  export function validateBytes(data: Uint8Array, options?: { readonly maxIssues?: number }): Promise<Report>;
}

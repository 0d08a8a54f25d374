/** The licence of one package that is part of the built page. */
export interface Licence {
  readonly name: string;
  readonly version: string;
  /** SPDX expression, such as "MIT". */
  readonly licence: string;
  /** Author as the package states it; may be empty. */
  readonly by: string;
  /** The licence's text as the package ships it; null when it ships none. */
  readonly text: string | null;
}

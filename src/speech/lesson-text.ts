/** The shape of a lesson's texts. */

/** What stands in a step. Names in braces are replaced by the facts of that name, in the reader's units. */
export interface StepText {
  readonly title: string;
  readonly says: readonly string[];
  readonly question?: string;
  /** Names of the options of a question "which". */
  readonly options?: Readonly<Record<string, string>>;
  /** Said once the answer is shown. */
  readonly after?: readonly string[];
}

export interface LessonText {
  readonly title: string;
  readonly about: string;
  readonly steps: Readonly<Record<string, StepText>>;
}

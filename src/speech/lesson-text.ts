/** The shape of a lesson's texts. */

/** What stands in a step. Names in braces are replaced by the facts of that name, in the reader's units. */
export interface StepText {
  readonly title: string;
  readonly says: readonly string[];
  readonly question?: string;
  /** Names of the options of a question "which". */
  readonly options?: Readonly<Record<string, string>>;
  /** What is to be achieved, and the names of what has to hold then. */
  readonly task?: string;
  readonly wanted?: Readonly<Record<string, string>>;
  /** Said once it is achieved. */
  readonly done?: readonly string[];
  /** Said once the answer is shown. */
  readonly after?: readonly string[];
}

export interface LessonText {
  readonly title: string;
  readonly about: string;
  readonly steps: Readonly<Record<string, StepText>>;
}

/** A statement with where it comes from, so that nothing on a sheet looks surer than it is. */

/**
 * src = read in a copy of the named source; mem = quoted from memory of the named source; calc = computed here;
 * practice = common practice, no source.
 */
export type Mark = 'src' | 'mem' | 'calc' | 'practice';

export interface Fact {
  readonly id: string;
  readonly text: string;
  readonly source: string;
  readonly mark: Mark;
}

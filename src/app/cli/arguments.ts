/** What `predict` was asked to do, from its arguments. */

export type Asked =
  | { readonly kind: 'help' }
  | { readonly kind: 'schema' }
  /** Paths as they were given; `-` is standard input. */
  | {
      readonly kind: 'predict';
      readonly project: string;
      readonly log: string | undefined;
      readonly strips: string | undefined;
    };

export type UsageTrouble =
  | { readonly code: 'no-file' }
  | { readonly code: 'two-files'; readonly files: readonly string[] }
  | { readonly code: 'unknown-option' | 'no-value' | 'twice' | 'takes-no-value'; readonly option: string }
  | { readonly code: 'both-from-input' };

export type ReadArguments =
  { readonly ok: true; readonly asked: Asked } | { readonly ok: false; readonly trouble: UsageTrouble };

const refuse = (trouble: UsageTrouble): ReadArguments => ({ ok: false, trouble });

const FLAGS: Readonly<Record<string, 'help' | 'schema'>> = { '--help': 'help', '-h': 'help', '--schema': 'schema' };

/** Options that take a file. */
const FILE_OPTIONS = ['--log', '--strips'] as const;
type FileOption = (typeof FILE_OPTIONS)[number];
const isFileOption = (option: string): option is FileOption => (FILE_OPTIONS as readonly string[]).includes(option);

/** @param given without the program's own name; after `--` everything is a file */
export function readArguments(given: readonly string[]): ReadArguments {
  const files: string[] = [];
  const named: Partial<Record<FileOption, string>> = {};
  for (let at = 0; at < given.length; at += 1) {
    const argument = given[at];
    if (argument === '--') {
      files.push(...given.slice(at + 1));
      break;
    }
    const [, option = '', value] = /^(--[^=]*|-[^=]+)(?:=(.*))?$/s.exec(argument) ?? [];
    const flag = FLAGS[option];
    if (option === '') files.push(argument);
    else if (flag)
      return value === undefined ? { ok: true, asked: { kind: flag } } : refuse({ code: 'takes-no-value', option });
    else if (!isFileOption(option)) return refuse({ code: 'unknown-option', option });
    else if (named[option] !== undefined) return refuse({ code: 'twice', option });
    else {
      const file = value ?? given[(at += 1)];
      if (file === undefined || file === '' || (value === undefined && /^-./.test(file)))
        return refuse({ code: 'no-value', option });
      named[option] = file;
    }
  }
  const [project, ...more] = files;
  if (project === undefined || project === '') return refuse({ code: 'no-file' });
  if (more.length > 0) return refuse({ code: 'two-files', files });
  const { '--log': log, '--strips': strips } = named;
  if ([project, log, strips].filter((file) => file === '-').length > 1) return refuse({ code: 'both-from-input' });
  return { ok: true, asked: { kind: 'predict', project, log, strips } };
}

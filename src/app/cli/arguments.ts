/** What `predict` was asked to do, from its arguments. */

export type Asked =
  | { readonly kind: 'help' }
  | { readonly kind: 'schema' }
  /** Paths as they were given; `-` is standard input. */
  | { readonly kind: 'predict'; readonly project: string; readonly log: string | undefined };

export type UsageTrouble =
  | { readonly code: 'no-file' }
  | { readonly code: 'two-files'; readonly files: readonly string[] }
  | { readonly code: 'unknown-option' | 'no-value' | 'twice' | 'takes-no-value'; readonly option: string }
  | { readonly code: 'both-from-input' };

export type ReadArguments =
  { readonly ok: true; readonly asked: Asked } | { readonly ok: false; readonly trouble: UsageTrouble };

const refuse = (trouble: UsageTrouble): ReadArguments => ({ ok: false, trouble });

const FLAGS: Readonly<Record<string, 'help' | 'schema'>> = { '--help': 'help', '-h': 'help', '--schema': 'schema' };

/** @param given without the program's own name; after `--` everything is a file */
export function readArguments(given: readonly string[]): ReadArguments {
  const files: string[] = [];
  let log: string | undefined;
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
    else if (option !== '--log') return refuse({ code: 'unknown-option', option });
    else if (log !== undefined) return refuse({ code: 'twice', option });
    else {
      log = value ?? given[(at += 1)];
      if (log === undefined || log === '' || (value === undefined && /^-./.test(log)))
        return refuse({ code: 'no-value', option });
    }
  }
  const [project, ...more] = files;
  if (project === undefined || project === '') return refuse({ code: 'no-file' });
  if (more.length > 0) return refuse({ code: 'two-files', files });
  if (project === '-' && log === '-') return refuse({ code: 'both-from-input' });
  return { ok: true, asked: { kind: 'predict', project, log } };
}

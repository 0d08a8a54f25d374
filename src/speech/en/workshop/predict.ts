/** What `npm run predict` says of itself and of what it cannot read. */
import { words } from '../../language.ts';

export const PREDICT_WORDS = words('PREDICT_WORDS', {
  usage: 'Usage: npm run --silent predict -- build.json [--log bench-log.csv] [--strips try-strips.json]',
  seeHelp: 'More: npm run --silent predict -- --help',
  help: [
    'Prints the prediction of one neck as JSON, with its checks.',
    '',
    '  build.json       the neck, as the page saves it; - reads it from standard input',
    '  --log file.csv   a bench log as the page saves it: it narrows the bands of a build\n                   that refers to its entries, as the page writes it into the build',
    '  --strips file    try strips as the page saves them: likewise, for a build that refers to them',
    '  --schema         prints the shape of the result as JSON Schema',
    '  --help, -h       prints this',
    '  --               everything after it is a file',
    '',
    'Files are read in UTF-8 or UTF-16. The result goes to standard output, messages to standard error.',
    'Every quantity carries its unit in its name (Mm, N, MPa, Percent, Days); p05, p50 and p95 are its band.',
    'Playing is soft, medium and hard; a maker’s own strength stays on the device that measured it.',
    'Checks are codes with their numbers; a check never changes the exit code.',
    '',
    'Exit codes: 0 printed; 1 a fault of the program, or it could not be installed; 2 the arguments, a file or a value in it were refused.',
  ].join('\n'),
  noFile: 'No build was named.',
  twoFiles: (files: string) =>
    `More than one build was named: ${files}. It takes one; a bench log stands after --log, and with npm all of it after “--”.`,
  unknownOption: (option: string) => `${option} is not an option; they are --log, --strips, --schema and --help.`,
  noValue: (option: string) => `${option} needs a file after it.`,
  twice: (option: string) => `${option} stands there twice; it takes one file.`,
  takesNoValue: (option: string) => `${option} takes nothing after it.`,
  bothFromInput: 'Only one of build, bench log and strips can come from standard input.',
  standardInput: 'Standard input',
  missing: (file: string) => `${file} cannot be read: there is no such file.`,
  folder: (file: string) => `${file} cannot be read: it is a folder.`,
  forbidden: (file: string) => `${file} cannot be read: this user may not.`,
  system: (file: string, code: string) => `${file} cannot be read: the system says ${code}.`,
  empty: (file: string) => `${file} is empty.`,
  tooLarge: (file: string, most: string) => `${file} is larger than ${most}, which is more than such a file can be.`,
  notUtf8: (file: string) => `${file} is not in UTF-8 or UTF-16. Save it as UTF-8.`,
  notUtf16: (file: string) => `${file} begins as UTF-16 but is damaged. Save it again, as UTF-8.`,
  utf32: (file: string) => `${file} is in UTF-32, which is not read. Save it as UTF-8.`,
  inFile: (file: string, message: string) => `${file}: ${message}`,
  nothingOfBite: (file: string) => `${file} says nothing of the bite: it has no neck that was pressed. Omit --log.`,
  noReference: (file: string) =>
    `The build refers to no measurements, so ${file} says nothing of it: use the log in the build on the page and save it again, or omit --log.`,
  'not-here': (file: string) =>
    `The build refers to measurements that are not in ${file}. Name the log that they are in, or omit --log.`,
  changed: (file: string) =>
    `The measurements that the build refers to have changed: in ${file} some are gone or say something else. Use the log in the build again on the page, or omit --log.`,
  noStripReference: (file: string) =>
    `The build refers to no try strips, so ${file} says nothing of it: use the strips for the neck on the page and save it again, or omit --strips.`,
  gripNotHere: (files: string) =>
    `The build refers to strips or readings that are not in ${files}. Name the files that they are in with --strips and --log, or omit both.`,
  gripChanged: (files: string) =>
    `The strips or readings that the build refers to have changed: in ${files} some are gone or say something else. Use them for the neck again on the page, or omit --strips and --log.`,
  gripByHand:
    'Bite or shape of the studs in the build are not those that its measurements gave. Use them for the neck again on the page, or omit --strips and --log.',
  otherBite: (given: string, file: string, measured: string) =>
    `biteFactor is ${given} in the build; ${file} gives ${measured}. The narrower bands belong to that factor: set biteFactor to ${measured} in the build, or omit --log.`,
  fault: (message: string) =>
    `The prediction failed by a fault of the program (${message}). Please report it with the build.`,
});

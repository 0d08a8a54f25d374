/** What is written can be read back: project file, link, and every number in both unit systems. */
import { PARAMETERS } from '../../src/neck/parameters.ts';
import type { NumberParameter, Parameter } from '../../src/neck/parameter-kinds.ts';
import { readProject, writeProject } from '../../src/neck/file.ts';
import { checkBuild } from '../../src/neck/schema.ts';
import { displayScale, numberText, parseTyped } from '../../src/speech/scale.ts';
import { sameBuild } from '../../src/state/history.ts';
import { readLink, writeLink } from '../../src/state/share/link.ts';
import { EMPTY_PAGE } from '../../src/state/share/shared.ts';
import { hold, type Invariant } from './invariant.ts';

const NUMBERS = (PARAMETERS as readonly Parameter[]).filter(
  (parameter): parameter is NumberParameter => parameter.kind === 'number',
);

export const FILES: readonly Invariant[] = [
  {
    name: 'the build is accepted as it is',
    every: 1,
    check: ({ build }) => {
      const checked = checkBuild(build);
      hold(checked.ok && sameBuild(checked.build, build), () => 'validation refuses or changes it');
    },
  },
  {
    name: 'project file and back',
    every: 1,
    check: ({ build }) => {
      const read = readProject(writeProject(build));
      hold(read.ok, () => (read.ok ? '' : JSON.stringify(read.problems)));
      hold(read.ok && sameBuild(read.build, build), () => 'another build comes back');
    },
  },
  {
    name: 'link and back',
    every: 1,
    check: ({ build }) => {
      const written = writeLink({ builds: [build], page: EMPTY_PAGE });
      hold(written.ok, () => 'no link can be written');
      const read = written.ok ? readLink(written.text) : undefined;
      hold(read?.ok === true && sameBuild(read.shared.builds[0], build), () => 'another build comes back');
    },
  },
  {
    name: 'the unit system changes no value',
    every: 5,
    check: ({ build }) => {
      for (const parameter of NUMBERS) {
        const stored = build[parameter.id as keyof typeof build] as number;
        for (const system of ['metric', 'inch'] as const) {
          const scale = displayScale(parameter, system);
          const back = scale.toStored(scale.toShown(stored));
          // Stored numbers are cleaned to nine digits after the point when they come from a display.
          hold(Math.abs(back - stored) <= 1e-9, () => `${parameter.id} ${stored} comes back from ${system} as ${back}`);
          const text = numberText(stored, scale, system);
          const typed = parseTyped(text, parameter, system);
          // What is shown is rounded to its digits: half a last digit, and rounding of the conversion.
          const half = Math.abs(scale.toStored(0.5 * 10 ** -scale.digits)) * (1 + 1e-9) + 2e-9;
          hold(
            typed !== undefined && Math.abs(typed - stored) <= half,
            () => `${parameter.id} ${stored} is shown as “${text}” and read back as ${typed} (${system})`,
          );
        }
      }
    },
  },
];

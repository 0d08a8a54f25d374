/** A sheet in hand against the neck on the bench: its stamp is typed, and what differs is said. */
import { useEffect, useId, useState } from 'react';
import type { Build } from '../../../neck/build.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import { PROGRAM_VERSION } from '../../../neck/version.ts';
import { STAMP_WORDS } from '../../../speech/en/pages/papers.ts';
import { formatWhen } from '../../../state/library/when.ts';
import {
  isOneLetterOff,
  isUnmeasured,
  neckOfStamp,
  readStamp,
  stampDifferences,
  type Candidate,
  type Stamp,
} from '../../../verdict/stamp.ts';
import { differingSettings } from '../../compare/settings.ts';
import { SheetTable } from '../data-table.tsx';
import { knownNecks } from './candidates.ts';

interface CheckStampProps {
  readonly build: Build;
  readonly system: UnitSystem;
  /** Of the neck on the bench. */
  readonly stamp: string;
}

/** The neck of a stamp, once the necks on this device were looked through; undefined until then. */
function useNeckOf({ build }: Pick<Stamp, 'build'>): Candidate | null | undefined {
  const [found, setFound] = useState<{ readonly of: string; readonly neck: Candidate | null }>();
  useEffect(() => {
    let isHere = true;
    void knownNecks().then((necks) => {
      if (isHere) setFound({ of: build, neck: neckOfStamp({ build }, necks) ?? null });
    });
    return () => {
      isHere = false;
    };
  }, [build]);
  return found?.of === build ? found.neck : undefined;
}

/** Which neck the sheet is of, where it is known here, and in which settings the two differ. */
function OtherBuild({ stamp, build, system }: Pick<CheckStampProps, 'build' | 'system'> & { readonly stamp: Stamp }) {
  const neck = useNeckOf(stamp);
  if (neck === undefined) return <li>{STAMP_WORDS.looking}</li>;
  if (neck === null) return <li>{STAMP_WORDS.unknown}</li>;
  const { name } = neck.build;
  const settings = differingSettings([neck.build, build], system).flatMap((group) => group.settings);
  return (
    <li>
      {neck.at === null ? STAMP_WORDS.knownPlain(name) : STAMP_WORDS.known(name, formatWhen(neck.at))}
      <SheetTable
        caption={STAMP_WORDS.setting}
        className="table-words"
        columns={[
          { id: 'setting', header: STAMP_WORDS.setting, kind: 'words' },
          { id: 'then', header: STAMP_WORDS.then, kind: 'words' },
          { id: 'now', header: STAMP_WORDS.now, kind: 'words' },
        ]}
        rows={settings.map(({ label, texts }) => [label, ...texts])}
      />
    </li>
  );
}

function Verdict({ typed, here, build, system }: Omit<CheckStampProps, 'stamp'> & Record<'typed' | 'here', Stamp>) {
  const differing = stampDifferences(typed, here);
  if (differing.length === 0) return <p className="stamp-same">{STAMP_WORDS.same}</p>;
  return (
    <>
      <p>
        <b>{STAMP_WORDS.different}</b> {isOneLetterOff(typed, here) && STAMP_WORDS.oneLetter}
      </p>
      <ul>
        {differing.includes('program') && <li>{STAMP_WORDS.program(PROGRAM_VERSION)}</li>}
        {differing.includes('measurements') && (
          <li>{isUnmeasured(typed) ? STAMP_WORDS.unmeasured : STAMP_WORDS.measured}</li>
        )}
        {differing.includes('build') && <OtherBuild stamp={typed} build={build} system={system} />}
      </ul>
    </>
  );
}

export function CheckStamp({ build, system, stamp }: CheckStampProps) {
  const [text, setText] = useState('');
  const [asked, setAsked] = useState<string | null>(null);
  const id = useId();
  const typed = readStamp(asked ?? '');
  const here = readStamp(stamp);
  return (
    <details className="check-stamp screen-only">
      <summary>{STAMP_WORDS.title}</summary>
      <p>{STAMP_WORDS.intro}</p>
      <form
        className="button-row"
        onSubmit={(event) => {
          event.preventDefault();
          setAsked(text);
        }}
      >
        <label htmlFor={id}>{STAMP_WORDS.label}</label>
        <input
          id={id}
          className="stamp"
          value={text}
          size={16}
          maxLength={40}
          autoComplete="off"
          autoCapitalize="characters"
          spellCheck={false}
          aria-invalid={asked !== null && asked === text && typed === null}
          aria-describedby={`${id}-verdict`}
          onChange={(event) => setText(event.currentTarget.value)}
        />
        <button type="submit">{STAMP_WORDS.check}</button>
      </form>
      <output id={`${id}-verdict`} htmlFor={id}>
        {asked !== null && typed === null && <p className="refusal">{STAMP_WORDS.none(stamp)}</p>}
        {typed && here && <Verdict key={asked} typed={typed} here={here} build={build} system={system} />}
      </output>
    </details>
  );
}

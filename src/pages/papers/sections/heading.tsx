/** The head of the sheet: whose neck it is, from which version and day, and the code that opens it again. */
import { useMemo } from 'react';
import type { Build } from '../../../neck/build.ts';
import { isolated } from '../../../speech/isolate.ts';
import { GROUPS } from '../../../neck/parameter-kinds.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import { PROGRAM_VERSION } from '../../../neck/version.ts';
import { addressOf } from '../../../state/share/address.ts';
import { writeLink } from '../../../state/share/link.ts';
import { EMPTY_PAGE } from '../../../state/share/shared.ts';
import { groupSummary } from '../../workshop/controls/group-summary.ts';
import { MOST_FOR_QR, qrPath } from '../../share/qr-code.tsx';
import type { Verdict } from '../../../verdict/in-short/verdict.ts';
import { verdictClauses } from '../../../speech/answers/verdict.ts';
import { SHEETS_WORDS } from '../../../speech/en/pages/sheets.ts';
import { PLAN_WORDS, STAMP_WORDS } from '../../../speech/en/pages/papers.ts';
import { groupName } from '../../../speech/names.ts';

function OpensAgain({ build }: { readonly build: Build }) {
  const address = useMemo(() => {
    const link = writeLink({ builds: [build], page: EMPTY_PAGE });
    const whole = link.ok ? addressOf(window.location.href, { kind: 'neck', link: link.text }) : '';
    return whole === '' || whole.length > MOST_FOR_QR ? undefined : { whole, ...qrPath(whole) };
  }, [build]);
  if (!address) return <p className="qr-none">{PLAN_WORDS.codeTooLong}</p>;
  const { whole, path, size } = address;
  return (
    <a className="qr-link" href={whole}>
      <svg viewBox={`0 0 ${size} ${size}`} aria-hidden="true" shapeRendering="crispEdges">
        <rect width={size} height={size} fill="#fff" />
        <path d={path} fill="#000" />
      </svg>
      <span>{PLAN_WORDS.code}</span>
    </a>
  );
}

interface HeadingProps {
  readonly verdict: Verdict;
  readonly build: Build;
  readonly system: UnitSystem;
  readonly date: string;
  readonly stamp: string;
}

/** The verdict as the page says it; how it feels has a table of its own further down. */
export function sheetVerdict(verdict: Verdict, system: UnitSystem): string {
  return verdictClauses(verdict, null, system)
    .map(({ text }) => text)
    .join(' ');
}

export function SheetHeading({ verdict, build, system, date, stamp }: HeadingProps) {
  return (
    <header className="sheet-head">
      <div>
        <h1 id="sheet-title" tabIndex={-1}>
          <span className="sheet-kind">{PLAN_WORDS.title}</span> {isolated(build.name)}
        </h1>
        <p className="sheet-meta">
          {SHEETS_WORDS.version(PROGRAM_VERSION)}, {PLAN_WORDS.made.toLowerCase()} {date}, {STAMP_WORDS.before}{' '}
          <b className="stamp">{stamp}</b>
        </p>
        <p className="sheet-verdict">{sheetVerdict(verdict, system)}</p>
        <h2 className="visually-hidden">{PLAN_WORDS.build}</h2>
        <dl className="sheet-summary">
          {GROUPS.filter((id) => id !== 'assumptions' && (id !== 'existing' || build.job === 'refret')).map((id) => (
            <div key={id}>
              <dt>{groupName(id)}</dt>
              <dd>{groupSummary(id, build, system)}</dd>
            </div>
          ))}
        </dl>
        {build.notes.trim() !== '' && (
          <p className="sheet-notes">
            <strong>{PLAN_WORDS.notes}:</strong> {isolated(build.notes)}
          </p>
        )}
      </div>
      <OpensAgain build={build} />
      <p className="sheet-deference">{PLAN_WORDS.deference}</p>
    </header>
  );
}

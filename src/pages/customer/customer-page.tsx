/** The page for the customer: the choices, in pictures and plain words; the workshop's own note; the numbers one tap away. */
import { useEffect, useMemo } from 'react';
import type { UnitSystem } from '../../neck/units.ts';
import type { ScenePalette } from '../../scene/types.ts';
import type { OwnStrength } from '../../playing/own-strength.ts';
import { useLanguage } from '../../kit/use-language.ts';
import { addressOf } from '../../state/share/address.ts';
import { useKeptStrength } from '../../state/matches/use-kept-strength.ts';
import { readLink } from '../../state/share/link.ts';
import type { LinkTrouble, Shared } from '../../state/share/shared.ts';
import { troubleTexts } from '../share/trouble-text.ts';
import { ChoiceSection, MeansLine } from './choice-section.tsx';
import { choiceFacts } from '../../verdict/choice-facts.ts';
import { GlanceTable } from './glance-table.tsx';
import { choiceLabels } from './labels.ts';
import { choiceSentences, MEANS, sharedMeans } from './sentences.ts';
import { usePictures } from './use-pictures.tsx';
import type { Solved } from '../../state/share/solve-choices.ts';
import { useSolved } from './use-solved.ts';
import { PROGRAM_VERSION } from '../../neck/version.ts';
import type { Build } from '../../neck/build.ts';
import { playedStamp, stampText } from '../../verdict/stamp.ts';
import { CUSTOMER_WORDS } from '../../speech/en/pages/customer.ts';
import './customer.css';

/** The bend is far too small to be seen; so many times larger it is clear, and necks still look like necks. */
const BOW_FACTOR = 40;

interface PageProps {
  readonly palette: ScenePalette;
  readonly system: UnitSystem;
}

interface CustomerPageProps extends PageProps {
  /** What stands after "customer=" in the address. */
  readonly link: string;
}

function useTitle(title: string): void {
  useEffect(() => {
    document.title = title;
  }, [title]);
}

function NotOpened({ trouble, system }: { readonly trouble: LinkTrouble; readonly system: UnitSystem }) {
  useTitle(CUSTOMER_WORDS.notOpened);
  return (
    <main className="customer">
      <h1>{CUSTOMER_WORDS.notOpened}</h1>
      <ul>
        {troubleTexts(trouble, system).map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      <p>
        <a href={location.pathname}>{CUSTOMER_WORDS.workshop}</a>
      </p>
    </main>
  );
}

function Letterhead({ shared }: { readonly shared: Shared }) {
  const { builds, page } = shared;
  return (
    <header>
      {page.from !== '' && <p className="from">{page.from}</p>}
      <h1>{builds.length > 1 ? CUSTOMER_WORDS.titleMany : CUSTOMER_WORDS.titleOne}</h1>
      {page.to !== '' && <p className="to">{CUSTOMER_WORDS.forWhom(page.to)}</p>}
      {page.note !== '' && (
        <section className="note">
          <h2>{CUSTOMER_WORDS.noteTitle}</h2>
          <p className="own-text">{page.note}</p>
        </section>
      )}
      <p>{CUSTOMER_WORDS.intro}</p>
    </header>
  );
}

/** Of the build as its bands are shown: narrowed where this device has accepted what it refers to. */
function stampHere(build: Build, { narrowedBy }: Solved, own: OwnStrength | null): string {
  return stampText(playedStamp(build, narrowedBy === undefined ? undefined : { hash: narrowedBy }, own));
}

function Opened({ shared, link, palette, system }: PageProps & { readonly shared: Shared; readonly link: string }) {
  const { builds, page } = shared;
  const { choices, failed, retry } = useSolved(builds);
  const pictures = usePictures({ builds, choices, palette, units: system, factor: BOW_FACTOR });
  const labels = choiceLabels(builds);
  const own = useKeptStrength();
  useTitle(builds.length > 1 ? CUSTOMER_WORDS.titleMany : CUSTOMER_WORDS.titleOne);
  const facts = choices.map(({ prediction, uncertainty }, index) =>
    prediction ? choiceFacts(builds[index], prediction, uncertainty, own) : null,
  );
  const known = facts.filter((one) => one !== null);
  const isKnown = known.length === builds.length;
  const sentences = facts.map((one) => one && choiceSentences(one, system));
  const shared4All = isKnown ? sharedMeans(sentences.filter((one) => one !== null)) : [];
  return (
    <main className="customer">
      <Letterhead shared={shared} />
      {failed && (
        <p role="alert">
          {CUSTOMER_WORDS.failed}{' '}
          <button type="button" onClick={retry}>
            {CUSTOMER_WORDS.retry}
          </button>
        </p>
      )}
      {pictures.unavailable && <p className="quiet">{CUSTOMER_WORDS.noPicture}</p>}
      {builds.length > 1 && <h2>{CUSTOMER_WORDS.choices}</h2>}
      <div className="choices-row" data-count={builds.length}>
        {builds.map((_, index) => (
          <ChoiceSection
            key={index}
            label={labels[index]}
            isAdvised={page.advised === index}
            sentences={sentences[index] ?? null}
            picture={pictures.addresses[index]}
            noPicture={pictures.unavailable}
            factor={BOW_FACTOR}
            means={MEANS.filter((id) => !shared4All.includes(id))}
          />
        ))}
      </div>
      {shared4All.length > 0 && (
        <section>
          <h2>{CUSTOMER_WORDS.forAll}</h2>
          <dl>
            {shared4All.map((id) => (
              <MeansLine key={id} id={id} text={sentences[0]![id]} />
            ))}
          </dl>
        </section>
      )}
      {builds.length > 1 && isKnown && <GlanceTable labels={labels} facts={known} system={system} />}
      <section className="sure">
        <h2>{CUSTOMER_WORDS.sureTitle}</h2>
        <p>{CUSTOMER_WORDS.sure}</p>
      </section>
      <footer className="button-row">
        <a href={addressOf(location.href, { kind: 'neck', link })}>{CUSTOMER_WORDS.engineering}</a>
        <button type="button" onClick={() => window.print()}>
          {CUSTOMER_WORDS.print}
        </button>
        <span className="quiet">
          {CUSTOMER_WORDS.made(
            PROGRAM_VERSION,
            builds.map((build, at) => stampHere(build, choices[at], own)).join(' · '),
          )}
        </span>
      </footer>
      {pictures.maker}
    </main>
  );
}

export function CustomerPage({ link, palette, system }: CustomerPageProps) {
  useLanguage();
  const read = useMemo(() => readLink(link), [link]);
  return read.ok ? (
    <Opened shared={read.shared} link={link} palette={palette} system={system} />
  ) : (
    <NotOpened trouble={read.trouble} system={system} />
  );
}

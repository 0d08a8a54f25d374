/** The page for the customer: the choices, in pictures and plain words; the workshop's own note; the numbers one tap away. */
import { useEffect, useMemo, useState } from 'react';
import type { Build } from '../../neck/build.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { PROGRAM_VERSION } from '../../neck/version.ts';
import type { ScenePalette } from '../../scene/types.ts';
import type { OwnStrength } from '../../playing/own-strength.ts';
import { useLanguage } from '../../kit/use-language.ts';
import { addressOf } from '../../state/share/address.ts';
import { readLink } from '../../state/share/link.ts';
import type { LinkTrouble, Shared } from '../../state/share/shared.ts';
import type { Solved } from '../../state/share/solve-choices.ts';
import { useKeptStrength } from '../../state/matches/use-kept-strength.ts';
import { builtFacts, choiceFacts } from '../../verdict/choice-facts.ts';
import { playedStamp, stampText } from '../../verdict/stamp.ts';
import { CUSTOMER_WORDS } from '../../speech/en/pages/customer.ts';
import { troubleTexts } from '../share/trouble-text.ts';
import { ChoiceSection, MeansLine } from './choice-section.tsx';
import { choiceLabels, isOneNeck, shownOrder } from './labels.ts';
import { Letterhead } from './letterhead.tsx';
import { LiesFigure } from './lies-figure.tsx';
import { factorFor, momentName, type KnownChoice, type ShownMoment } from './moments.ts';
import {
  builtSentences,
  choiceSentences,
  MEANS,
  sharedMeans,
  type ChoiceSentences,
  type MeansId,
} from './sentences.ts';
import { Solids } from './solids.tsx';
import { usePictures } from './use-pictures.tsx';
import { useSolved } from './use-solved.ts';
import './customer.css';

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

/** Of the build as its bands are shown: narrowed where this device has accepted what it refers to. */
function stampHere(build: Build, { narrowedBy }: Solved, own: OwnStrength | null): string {
  return stampText(playedStamp(build, narrowedBy === undefined ? undefined : { hash: narrowedBy }, own));
}

/** What is the same with every choice. */
function ForAll({
  sentences,
  means,
}: {
  readonly sentences: Partial<ChoiceSentences>;
  readonly means: readonly MeansId[];
}) {
  if (means.length === 0) return null;
  return (
    <section className="for-all">
      <h2>{CUSTOMER_WORDS.forAll}</h2>
      <dl>
        {means.map((id) => (
          <MeansLine key={id} id={id} text={sentences[id]} />
        ))}
      </dl>
    </section>
  );
}

interface PicturesProps extends PageProps {
  readonly choices: readonly KnownChoice[];
}

/** Everything that is drawn of the choices; lines at once, solids as they come. */
function ChoicePictures({ choices, palette, system }: PicturesProps) {
  const [moment, show] = useState<ShownMoment>('fretted');
  const factor = factorFor(choices);
  const builds = choices.map(({ build }) => build);
  const drawn = useMemo(
    () => (isOneNeck(choices.map(({ build }) => build)) ? choices.slice(0, 1) : choices),
    [choices],
  );
  const pictures = usePictures({ choices: drawn, palette, units: system, factor });
  return (
    <section className="how-it-lies">
      <h2>{CUSTOMER_WORDS.liesTitle}</h2>
      <LiesFigure choices={choices} factor={factor} moment={moment} show={show} system={system} />
      {pictures.unavailable ? (
        <p className="quiet">{CUSTOMER_WORDS.noPicture}</p>
      ) : (
        <Solids
          solids={drawn.map(({ label }, place) => ({
            label,
            moment: momentName(moment, builds),
            address: pictures.addressOf(place, moment),
          }))}
        />
      )}
      {pictures.maker}
    </section>
  );
}

/** Those that are computed, in the order in which they are shown; null until all of them are. */
function useKnown(
  builds: readonly Build[],
  labels: readonly string[],
  order: readonly number[],
  choices: readonly Solved[],
): readonly KnownChoice[] | null {
  const predictions = choices.map(({ prediction }) => prediction);
  const isKnown = predictions.length === builds.length && predictions.every((prediction) => prediction !== null);
  const said = labels.join('\n');
  return useMemo(
    () => (isKnown ? order.map((at) => ({ label: labels[at], build: builds[at], prediction: predictions[at] })) : null),
    // The predictions of a build do not change; only when all are there matters.
    // oxlint-disable-next-line react/exhaustive-deps
    [builds, isKnown, said],
  );
}

function Opened({ shared, link, palette, system }: PageProps & { readonly shared: Shared; readonly link: string }) {
  const { builds, page, offers = [] } = shared;
  const { choices, failed, retry } = useSolved(builds);
  const labels = choiceLabels(builds);
  const order = shownOrder(builds.length, page.advised);
  const own = useKeptStrength();
  useTitle(builds.length > 1 ? CUSTOMER_WORDS.titleMany : CUSTOMER_WORDS.titleOne);
  const known = useKnown(builds, labels, order, choices);
  const sentences = builds.map((build, at): Partial<ChoiceSentences> => {
    const { prediction, uncertainty } = choices[at] ?? {};
    return prediction
      ? choiceSentences(choiceFacts(build, prediction, uncertainty ?? null, own), system)
      : builtSentences(builtFacts(build));
  });
  const shared4All = sharedMeans(sentences);
  const marks = builds.map((build, at) => stampHere(build, choices[at], own));
  return (
    <main className="customer">
      <Letterhead page={page} count={builds.length} />
      {failed && (
        <p role="alert">
          {CUSTOMER_WORDS.failed}{' '}
          <button type="button" onClick={retry}>
            {CUSTOMER_WORDS.retry}
          </button>
        </p>
      )}
      {known && <ChoicePictures choices={known} palette={palette} system={system} />}
      {builds.length > 1 && <h2>{CUSTOMER_WORDS.choices}</h2>}
      <div className="choices-row" data-count={builds.length}>
        {order.map((at) => (
          <ChoiceSection
            key={at}
            chosen={{ label: labels[at], neck: builds[at].name, mark: marks[at] }}
            from={page.from}
            isAdvised={page.advised === at}
            isOnlyOne={builds.length === 1}
            offer={offers[at]}
            sentences={sentences[at]}
            isComing={!failed && !choices[at]?.prediction}
            means={MEANS.filter((id) => !shared4All.includes(id))}
          />
        ))}
      </div>
      <ForAll sentences={sentences[0]} means={shared4All} />
      <section className="sure">
        <h2>{CUSTOMER_WORDS.sureTitle}</h2>
        <p>{CUSTOMER_WORDS.allSure}</p>
      </section>
      <footer className="button-row">
        <a href={addressOf(location.href, { kind: 'neck', link })}>{CUSTOMER_WORDS.engineering}</a>
        <button type="button" onClick={() => window.print()}>
          {CUSTOMER_WORDS.print}
        </button>
        <span className="quiet">{CUSTOMER_WORDS.made(PROGRAM_VERSION, marks.join(' · '))}</span>
      </footer>
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

/** One combination of tangs: what it reaches, what it does to the slots, and taking it over. */
import type { Build } from '../../../neck/build.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import { formatNumber } from '../../../speech/quantity.ts';
import { numberOf, textOf } from '../../../speech/quantity-text.ts';
import type { StretchForces } from '../../../mechanics/seating/refret-answers.ts';
import type { AdvisedPlan } from '../../../verdict/raised-by.ts';
import { bowText } from '../../../speech/bow.ts';
import { bandText, missText } from '../wanted/goal.ts';
import { Raised } from '../../workshop/checks/raised.tsx';
import { UseButton } from '../wanted/use-button.tsx';
import { WANTED_WORDS } from '../../../speech/en/pages/answers.ts';
import { REFRET_WORDS } from '../../../speech/en/pages/refret.ts';

interface PlanCardProps {
  readonly index: number;
  readonly build: Build;
  readonly plan: AdvisedPlan;
  readonly targetMm: number;
  readonly system: UnitSystem;
  readonly isStale: boolean;
  readonly use: (change: Partial<Build>, label: string) => void;
}

/** Share of the crushing strength from which a wall is spoken of. */
const NEAR_CRUSHING = 0.75;

const fretsText = ({ fromFret, toFret }: StretchForces) => REFRET_WORDS.fretRange(fromFret, toFret);

function forceText({ leastForceN, mostForceN }: StretchForces, system: UnitSystem): string {
  const most = textOf('seatingForceN', mostForceN, system);
  const least = textOf('seatingForceN', leastForceN, system);
  return REFRET_WORDS.forceRange(least === most ? most : numberOf('seatingForceN', leastForceN, system), most);
}

/** Warnings about the walls, from the prediction. */
function wallsOf({ stretches }: AdvisedPlan): string[] {
  return stretches.flatMap((stretch) => {
    const share = stretch.wallPressureShare;
    if (share >= 0.995) return [REFRET_WORDS.crushes(fretsText(stretch))];
    return share > NEAR_CRUSHING ? [REFRET_WORDS.nearCrushing(fretsText(stretch))] : [];
  });
}

export function PlanCard(props: PlanCardProps) {
  const { index, build, plan, targetMm, system, isStale, use } = props;
  const isInUse = JSON.stringify(build.regions) === JSON.stringify(plan.regions);
  return (
    <li className="answer" data-plan={index}>
      <h4>{REFRET_WORDS.plan(index)}</h4>
      <p>
        {REFRET_WORDS.reaches(bowText(plan.reliefMm, system), missText(plan.reliefMm - targetMm, system))}{' '}
        {REFRET_WORDS.fromLine(textOf('missMm', plan.missMm, system))}{' '}
        <span className="quiet">{WANTED_WORDS.band(bandText(plan.bandMm, system))}</span>
      </p>
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- it scrolls, so keys must reach it */}
      <section className="table-scroll" tabIndex={0} aria-label={REFRET_WORDS.plan(index)}>
        <table className="answer-table">
          <thead>
            <tr>
              <th scope="col">{REFRET_WORDS.frets}</th>
              <th scope="col">{REFRET_WORDS.tangSize}</th>
              <th scope="col">{REFRET_WORDS.force}</th>
              <th scope="col">{REFRET_WORDS.pressure}</th>
            </tr>
          </thead>
          <tbody>
            {plan.stretches.map((stretch) => (
              <tr key={stretch.fromFret}>
                <th scope="row">{fretsText(stretch)}</th>
                <td>
                  {numberOf('tangWidthMm', stretch.tang.tangWidthMm, system)} /{' '}
                  {textOf('studWidthMm', stretch.tang.studWidthMm, system)}
                </td>
                <td>{forceText(stretch, system)}</td>
                <td>
                  {stretch.wallPressureShare > 0
                    ? REFRET_WORDS.ofCrushing(`${formatNumber(100 * stretch.wallPressureShare, 0)}\u00a0%`)
                    : REFRET_WORDS.studsOnly}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {wallsOf(plan).map((text) => (
        <p key={text} className="plan-warning">
          {text}
        </p>
      ))}
      {!isInUse && <Raised checks={plan.raised} system={system} />}
      {isInUse && <p className="quiet">{REFRET_WORDS.inUse}</p>}
      {!isInUse && (
        <UseButton
          words={REFRET_WORDS.use}
          isStale={isStale}
          onUse={() => use({ regions: plan.regions }, REFRET_WORDS.step(index))}
        />
      )}
    </li>
  );
}

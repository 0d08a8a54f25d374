/** One combination of tangs: what it reaches, what it does to the slots, and taking it over. */
import type { Build } from '../../../neck/build.ts';
import type { UnitSystem } from '../../../neck/units.ts';
import { formatNumber } from '../../../speech/quantity.ts';
import { numberOf, textOf } from '../../../speech/quantity-text.ts';
import { checkFretwork } from '../../../fretwork/checks/checks.ts';
import type { CheckCode } from '../../../fretwork/checks/check-types.ts';
import type { StretchForces, TangPlanSummary } from '../../../mechanics/seating/refret-answers.ts';
import { bowText } from '../../../speech/bow.ts';
import { checkNumbers, checkReason } from '../../../speech/checks.ts';
import { CHECK_WORDS } from '../../../speech/en/fretwork/checks.ts';
import { bandText, missText } from '../wanted/goal.ts';
import { UseButton } from '../wanted/use-button.tsx';
import { WANTED_WORDS } from '../../../speech/en/pages/answers.ts';
import { REFRET_WORDS } from '../../../speech/en/pages/refret.ts';

interface PlanCardProps {
  readonly index: number;
  readonly build: Build;
  readonly plan: TangPlanSummary;
  readonly targetMm: number;
  readonly system: UnitSystem;
  readonly isStale: boolean;
  readonly use: (change: Partial<Build>, label: string) => void;
}

/** What a combination of tangs can do to slots and board. */
const CONCERNS: readonly CheckCode[] = [
  'no-bite',
  'weak-bite',
  'too-tight',
  'body-wedges',
  'slot-too-shallow',
  'slot-shallow-at-edge',
  'little-board-left',
  'board-edge-thin',
  'studs-overlap',
];
/** Share of the crushing strength from which a wall is spoken of. */
const NEAR_CRUSHING = 0.75;

const fretsText = ({ fromFret, toFret }: StretchForces) => REFRET_WORDS.fretRange(fromFret, toFret);

function forceText({ leastForceN, mostForceN }: StretchForces, system: UnitSystem): string {
  const most = textOf('seatingForceN', mostForceN, system);
  const least = textOf('seatingForceN', leastForceN, system);
  return REFRET_WORDS.forceRange(least === most ? most : numberOf('seatingForceN', leastForceN, system), most);
}

/** Warnings about walls and board: of the walls from the prediction, of the rest from the checks of the fretwork. */
function warningsOf({ build, plan, system }: Pick<PlanCardProps, 'build' | 'plan' | 'system'>): string[] {
  const walls = plan.stretches.flatMap((stretch) => {
    const share = stretch.wallPressureShare;
    if (share >= 0.995) return [REFRET_WORDS.crushes(fretsText(stretch))];
    return share > NEAR_CRUSHING ? [REFRET_WORDS.nearCrushing(fretsText(stretch))] : [];
  });
  const checks = checkFretwork({ ...build, regions: plan.regions })
    .filter(({ code, severity }) => severity !== 'note' && CONCERNS.includes(code))
    .map((check) =>
      [`${CHECK_WORDS.severities[check.severity]}: ${checkReason(check)}`, checkNumbers(check, system)].join(' '),
    );
  return [...walls, ...checks];
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
      {warningsOf(props).map((text) => (
        <p key={text} className="plan-warning">
          {text}
        </p>
      ))}
      {isInUse ? (
        <p className="quiet">{REFRET_WORDS.inUse}</p>
      ) : (
        <UseButton
          words={REFRET_WORDS.use}
          isStale={isStale}
          onUse={() => use({ regions: plan.regions }, REFRET_WORDS.step(index))}
        />
      )}
    </li>
  );
}

/** The verdict and what it rests on: the numbers, the checks, the chart. It comes beside the picture, which does not wait for it. */
import { BowChart } from '../pages/workshop/chart/bow-chart.tsx';
import { ChecksList } from '../pages/workshop/checks/checks-list.tsx';
import { Readouts } from '../pages/workshop/readouts/readouts.tsx';
import { Verdict, VerdictRest } from '../pages/workshop/verdict/verdict.tsx';

export { Verdict };

export function Evidence() {
  return (
    <>
      <VerdictRest />
      <Readouts />
      <ChecksList />
      <BowChart />
    </>
  );
}

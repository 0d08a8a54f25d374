/** What the verdict rests on: the numbers, the checks, the chart. It comes beside the picture, which does not wait for it. */
import { BowChart } from '../pages/workshop/chart/bow-chart.tsx';
import { ChecksList } from '../pages/workshop/checks/checks-list.tsx';
import { Readouts } from '../pages/workshop/readouts/readouts.tsx';

export default function Evidence() {
  return (
    <>
      <Readouts />
      <ChecksList />
      <BowChart />
    </>
  );
}

/** Several necks that came by a link or in a file, until one of them is opened. */
import { create } from 'zustand';
import type { CollectedBuild, RefusedBuild } from '../../state/share/file.ts';
import { EMPTY_PAGE, type Offer, type PageText } from '../../state/share/shared.ts';

export interface Received {
  readonly builds: readonly CollectedBuild[];
  readonly page: PageText;
  readonly offers?: readonly Offer[];
  readonly refused: readonly RefusedBuild[];
  /** Could the texts of the customer's page not be read? */
  readonly pageRefused: boolean;
}

export const useReceived = create<Received>(() => ({ builds: [], page: EMPTY_PAGE, refused: [], pageRefused: false }));

export function keepReceived(received: Received): void {
  useReceived.setState(received, true);
}

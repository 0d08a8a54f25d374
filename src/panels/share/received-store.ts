/** A comparison that came by link, until one of its necks is opened. */
import { create } from 'zustand';
import type { Shared } from '../../state/share/shared.ts';

interface Received {
  readonly shared: Shared | null;
  /** The link that it came by. */
  readonly link: string;
}

export const useReceived = create<Received>(() => ({ shared: null, link: '' }));

export function keepReceived(shared: Shared, link: string): void {
  useReceived.setState({ shared, link });
}

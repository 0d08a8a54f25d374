/** Starts the page: the workshop, or the customer's page when the address names one. */
import { routeOf } from '../state/share/address.ts';
import './style/index.css';

const root = document.getElementById('root')!;
const route = routeOf(location.hash);

/** From one to the other, and from one customer's page to the next, the page starts afresh; the bench is kept. */
function startAfresh(): void {
  if (route?.kind === 'customer' || routeOf(location.hash)?.kind === 'customer') location.reload();
}

async function start(): Promise<void> {
  addEventListener('hashchange', startAfresh);
  if (route?.kind === 'customer') (await import('./customer.tsx')).startCustomer(root, route.link);
  else await (await import('./workshop.tsx')).startWorkshop(root);
}

start().catch(() => {
  // Not even the words have come, so these stand here.
  root.textContent = 'Backbow could not be fetched whole. Load the page again when the network is back.';
});

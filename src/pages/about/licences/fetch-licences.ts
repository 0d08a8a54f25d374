/** Fetches the list of licences that lies beside the built page. */
import type { Licence } from './licence.ts';

const ADDRESS = './licences.json';

/** @returns null when there is no list, as on a page that is being developed */
export async function fetchLicences(): Promise<readonly Licence[] | null> {
  try {
    const response = await fetch(ADDRESS);
    return response.ok ? ((await response.json()) as readonly Licence[]) : null;
  } catch {
    return null;
  }
}

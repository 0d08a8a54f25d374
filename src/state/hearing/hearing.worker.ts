/** The worker that looks for taps and tones, so that the page does not stand still meanwhile. */
import { expose } from 'comlink';
import { hear } from '../../mechanics/hearing/hear.ts';

const api = { hear };
export type HearingApi = typeof api;

expose(api);

/** What a worker refuses crosses to the page as data: by itself, comlink keeps no more of an error than its message. */
import { transferHandlers } from 'comlink';
import { refusalOf } from '../mechanics/refusal.ts';

/** How comlink sends what was thrown; the page assigns the properties of `value` to a new error. */
interface Sent {
  readonly isError: boolean;
  readonly value: unknown;
}

/** In the worker, before it answers anything. @throws {Error} when comlink no longer sends errors in this way */
export function throwRefusals(): void {
  const usual = transferHandlers.get('throw');
  if (!usual) throw new Error('comlink has no handler for what is thrown');
  transferHandlers.set('throw', {
    ...usual,
    serialize: (thrown: { readonly value: unknown }) => {
      const [sent, transferred] = usual.serialize(thrown) as [Sent, Transferable[]];
      const refusal = refusalOf(thrown.value);
      return [refusal ? { ...sent, value: { ...(sent.value as object), refusal } } : sent, transferred];
    },
  });
}

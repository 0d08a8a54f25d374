/** Blades and wires in a backup. One that says something else here stays as it is. */
import { hashOfText } from '../../mechanics/bench-log/identity.ts';
import type { TextStorage } from '../journal/journal.ts';
import { stockItemOf } from '../stock/stock-item.ts';
import { changedStock, MOST_STOCK, STOCK_FORM, STOCK_KEY, textOfStock } from '../stock/stock-store.ts';
import type { Part } from './part.ts';
import { textPart } from './text-part.ts';

export const stockPart = (texts: () => TextStorage): Part =>
  textPart(
    {
      id: 'stock',
      most: MOST_STOCK,
      form: STOCK_FORM,
      read: stockItemOf,
      idOf: ({ id }) => id,
      hash: (item) => hashOfText(JSON.stringify(item)),
      changed: changedStock,
    },
    { texts, key: STOCK_KEY, textOf: textOfStock },
  );

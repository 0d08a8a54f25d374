/** What the workshop calls the blade or the wire of a change. */
import type { StockName } from '../../speech/measured/fretting.ts';
import { isolated } from '../../speech/isolate.ts';
import type { StockItem } from '../../state/stock/stock-item.ts';

export function stockNames(items: readonly StockItem[]): StockName {
  return (change) => {
    const found = items.find((item) =>
      item.kind === 'blade'
        ? change.code === 'kerf' && item.kerfMm === change.kerfMm
        : change.code === 'wire' && item.tangWidthMm === change.tangWidthMm && item.studWidthMm === change.studWidthMm,
    );
    return isolated(found?.name ?? '');
  };
}

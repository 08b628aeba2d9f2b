import { PLANE } from '@/lib/format/words/mix-plane';
import { columnHeads, TABLE } from '@/lib/format/words/mix-table';
import { reading } from '@/lib/format/words/shell';
import plane from '../../_ui/mix-plane/mix-plane.module.css';
import table from '../../_ui/mix-table/mix-table.module.css';
import styles from './menu.module.css';

/** A figure not yet known. */
function Awaited({ em }: { em: number }) {
  return <span className="awaited" style={{ width: `${em}em` }} />;
}

export function SentenceWait() {
  return (
    <div className={styles.saying}>
      <p className={styles.lede} aria-hidden="true">
        <Awaited em={32} /> <Awaited em={30} />
      </p>
      <p className={styles.basis} role="status">
        {reading('the sales and recipes')}
      </p>
    </div>
  );
}

export function PictureWait() {
  return (
    <div className={styles.sheet}>
      <figure>
        <div className={plane.place}>
          <div className={plane.picture}>
            <p className={plane.waiting}>{PLANE.waiting}</p>
          </div>
        </div>
        <p className={plane.reading} />
      </figure>
    </div>
  );
}

const ROWS = [9, 12, 7, 10, 8, 11];

export function TableWait() {
  const heads = columnHeads('', null);
  const columns = (['item', 'sold', 'leaves', 'contribution'] as const).map((id) => ({ id, name: heads[id][0] }));
  return (
    <div className={styles.table} aria-hidden="true">
      <table className={table.table}>
        <caption>{TABLE.caption}</caption>
        <thead>
          <tr>
            {columns.map(({ id, name }) => (
              <th key={id} className={id === 'item' ? undefined : table.number}>
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {ROWS.map((em) => (
            <tr key={em}>
              {columns.map(({ id }) => (
                <td key={id} className={id === 'item' ? undefined : table.number}>
                  <Awaited em={id === 'item' ? em : 3} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

import { perCentFigure } from '@/lib/format/figures';
import { concentrationSentence, SPREAD } from '@/lib/format/words/price-spread';
import { atStake, concentration } from '@/lib/reports/at-stake';
import { tornado } from '@/lib/reports/tornado';
import { Said } from '../../../_ui/said';
import { Tornado } from '../../../_ui/tornado/tornado';
import { tornadoFacts } from '../../../_ui/tornado/tornado-facts';
import type { Asked } from '../asked';
import menu from '../menu.module.css';
import { pricedOf } from './asked-prices';
import styles from './stake-panel.module.css';

/** Product groups that are listed; together with the rest they are all of the food cost. */
const LISTED = 6;

/** Which prices matter: what each one's own spread is worth, and whether one product group carries the menu. */
export async function StakePanel({ asked }: { asked: Asked }) {
  const priced = await pricedOf(asked.venue, asked.month);
  if (!priced.ok || priced.answer.model.items.length === 0) return null;
  const { model } = priced.answer;
  const { currency, locale } = model.venue;
  const facts = tornadoFacts(tornado(model), { currency, locale });
  const groups = atStake(model, 'group', null);
  const most = concentration(groups);
  if (facts === null && most === null) return null;
  return (
    <div className={menu.sheet}>
      <div>{facts && <Tornado facts={facts} />}</div>
      {most && (
        <section className={styles.groups}>
          <h2>{SPREAD.groups}</h2>
          <p>
            <Said phrase={concentrationSentence(most, locale)} />
          </p>
          <ul>
            {groups.rows
              .filter(({ share }) => share !== null)
              .slice(0, LISTED)
              .map(({ name, share }) => (
                <li key={name ?? ''}>
                  <span>{name ?? SPREAD.noGroup}</span>
                  <span className={styles.bar} aria-hidden="true">
                    <span style={{ width: `${((share ?? 0) * 100).toFixed(2)}%` }} />
                  </span>
                  <span className={styles.share}>{perCentFigure(share ?? 0, locale)}</span>
                </li>
              ))}
          </ul>
        </section>
      )}
    </div>
  );
}

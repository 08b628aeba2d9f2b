import Link from 'next/link';
import { nameKey } from '@/lib/core/name-key';
import { TREE, treeCaption } from '@/lib/format/words/cost-tree';
import { CostTree } from '../../../../_ui/cost-tree/cost-tree';
import { boughtInAll, isTree, treeFacts } from '../../../../_ui/cost-tree/tree-facts';
import { treeLayout } from '../../../../_ui/cost-tree/tree-layout';
import { TREE_SIZES } from '../../../../_ui/cost-tree/tree-size';
import styles from '../../../../_ui/dish/dish.module.css';
import { DishChange } from '../../../../_ui/dish/dish-change';
import { DishNotes, DishStanding } from '../../../../_ui/dish/dish-notes';
import { PictureOut } from '../../../../_ui/picture-out/picture-out';
import { Said } from '../../../../_ui/said';
import { periodsOf } from '../../asked';
import menu from '../../menu.module.css';
import { type DishAsked, dishHref, dishOf, workingOf } from '../asked';

/** As many ingredients may be chosen to be followed. */
const FOLLOWED = 6;

/** What a saved picture is called: letters and figures of the name, whatever else it has. */
function fileName(item: string, month: string): string {
  return `${nameKey(item).replace(/[^\p{L}\p{N}]+/gu, '-')}-${month}`;
}

/** The cost of a portion as a tree, one commodity followed through it, and the notes in the margin. */
export async function PicturePanel({ asked }: { asked: DishAsked }) {
  const [dish, working, periods] = await Promise.all([
    dishOf(asked.venue, asked.month, asked.item),
    workingOf(asked.venue, asked.month, asked.item),
    periodsOf(asked.venue),
  ]);
  if (!dish.ok || !periods.ok) return null;
  const purse = { currency: dish.answer.currency, locale: periods.answer.locale };
  const facts = working.ok ? treeFacts(working.answer) : null;
  const bought = facts ? boughtInAll(facts) : [];
  const followed = bought.find(({ name }) => name === asked.follow) ?? bought[0] ?? null;
  const [wide] = TREE_SIZES;
  return (
    <div className={menu.sheet}>
      <figure>
        {!working.ok || !facts || facts.parts.length === 0 || !isTree(facts) ? (
          <p className={menu.caption}>{facts && facts.parts.length > 0 ? TREE.oneCost : TREE.nothing}</p>
        ) : (
          <>
            <CostTree facts={facts} followed={followed?.name ?? null} purse={purse} />
            <PictureOut file={fileName(dish.answer.item, asked.month)} />
            <figcaption className={menu.caption}>
              <p>
                <Said
                  phrase={treeCaption(
                    {
                      date: working.answer.date,
                      folded: treeLayout(facts, wide, null).folded,
                      notMeasured: working.answer.lines.some(({ kind }) => kind === 'not_measured'),
                      unknown: facts.unknown,
                      credits: facts.credits,
                      followed: followed && { name: followed.name, cost: followed.cost },
                    },
                    purse,
                  )}
                />
              </p>
            </figcaption>
            {bought.length > 1 && (
              <nav className={styles.follow} aria-label={TREE.follow}>
                <span>{TREE.followInstead}</span>
                {bought.slice(0, FOLLOWED).map(({ name }) => (
                  <Link
                    key={name}
                    href={dishHref({ ...asked, follow: name })}
                    prefetch={false}
                    scroll={false}
                    aria-current={name === followed?.name ? 'true' : undefined}
                  >
                    {name}
                  </Link>
                ))}
              </nav>
            )}
          </>
        )}
      </figure>
      <DishNotes dish={dish.answer} purse={purse} />
      <div className={styles.reading}>
        {dish.answer.change && <DishChange change={dish.answer.change} month={dish.answer.month} purse={purse} />}
        <DishStanding dish={dish.answer} purse={purse} />
      </div>
    </div>
  );
}

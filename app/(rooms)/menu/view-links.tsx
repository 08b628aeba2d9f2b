import type { Route } from 'next';
import Link from 'next/link';
import { MODELS } from '@/lib/format/words/menu-models';
import { PRICES } from '@/lib/format/words/price-changes';
import { SHELL } from '@/lib/format/words/shell';
import { WEEK } from '@/lib/format/words/week';
import { YEAR } from '@/lib/format/words/year';
import { type Asked, viewHref } from './asked';
import styles from './view-links.module.css';

/** The views of the Menu room that there are, in the order in which they are read. A new page adds its line. */
const VIEWS = [
  { path: '/menu', name: SHELL.mixView },
  { path: '/menu/models', name: MODELS.view },
  { path: '/menu/prices', name: PRICES.title },
  { path: '/menu/dishes', name: SHELL.dishesView },
  { path: '/menu/year', name: YEAR.view },
  { path: '/menu/week', name: WEEK.view },
] as const satisfies readonly { path: Route; name: string }[];

/** Where a view stands in the line. */
export type MenuView = (typeof VIEWS)[number]['path'];

/** The second line of words: the views of the Menu room, each for the month and venue that are looked at. */
export function ViewLinks({ current, asked }: { current: MenuView | null; asked: Asked }) {
  return (
    <nav className={`wrap ${styles.views}`} aria-label={SHELL.views}>
      <ul>
        {VIEWS.map(({ path, name }) => (
          <li key={path}>
            <Link href={viewHref(path, asked)} prefetch={false} aria-current={path === current ? 'page' : undefined}>
              {name}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}

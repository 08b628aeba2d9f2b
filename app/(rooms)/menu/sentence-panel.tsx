import Link from 'next/link';
import { periodName } from '@/lib/format/periods';
import { mixBasis, mixSentences } from '@/lib/format/words/menu-mix';
import { setMenusWords } from '@/lib/format/words/set-menus';
import { NO_SALES, noSalesIn, problemState } from '@/lib/format/words/shell';
import button from '../../_ui/button.module.css';
import { Said } from '../../_ui/said';
import { State } from '../../_ui/state';
import { type Asked, askedMix, menuHref, periodsOf } from './asked';
import styles from './menu.module.css';

/** What the month comes to, in words; where there is no answer, why, and what to do. */
export async function SentencePanel({ asked }: { asked: Asked }) {
  const [mix, periods] = await Promise.all([askedMix(asked), periodsOf(asked.venue)]);
  const problem = !periods.ok ? periods.problem : !mix.ok ? mix.problem : null;
  if (problem) return <State kind={problem.status === 403 ? 'denied' : 'empty'} words={problemState(problem)} />;
  if (!periods.ok || !mix.ok) return null;
  const { locale, months } = periods.answer;
  const latest = months.at(-1);
  if (!latest) return <State kind="empty" words={NO_SALES} />;
  if (mix.answer.totals.sold === 0 && mix.answer.waiting.rows === 0 && asked.section === null) {
    const words = noSalesIn(periodName(asked.month, locale), latest.month, locale);
    return (
      <State kind="empty" words={words}>
        <Link
          prefetch={false}
          className={`${button.button} ${button.main}`}
          href={menuHref({ ...asked, month: latest.month })}
        >
          {words.action}
        </Link>
      </State>
    );
  }
  const isSpread = mix.answer.setMenus === 'spread';
  const setMenus = asked.section === null ? setMenusWords(mix.answer.setMenusSold, isSpread, locale) : null;
  const telling = { locale, running: months.some(({ month, running }) => month === asked.month && running) };
  return (
    <div className={styles.saying}>
      <p className={styles.lede}>
        <Said phrase={mixSentences(mix.answer, telling)} />
      </p>
      <p className={styles.basis}>{mixBasis(mix.answer, telling).join(' · ')}</p>
      {setMenus && (
        <p className={styles.basis}>
          {setMenus.where}{' '}
          <Link
            className={styles.setMenus}
            prefetch={false}
            scroll={false}
            href={menuHref({ ...asked, setMenus: isSpread ? null : 'spread' })}
          >
            {setMenus.action}
          </Link>
        </p>
      )}
    </div>
  );
}

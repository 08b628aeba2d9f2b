import Link from 'next/link';
import { NOT_FOUND } from '@/lib/format/words/shell';
import button from './_ui/button.module.css';
import { State } from './_ui/state';

export default function NotFound() {
  return (
    <main id="main" className="wrap">
      <h1 className="unseen">{NOT_FOUND.title}</h1>
      <State kind="empty" words={NOT_FOUND}>
        <Link prefetch={false} className={`${button.button} ${button.main}`} href="/menu">
          {NOT_FOUND.action}
        </Link>
      </State>
    </main>
  );
}

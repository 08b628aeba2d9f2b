import type { CostedPeriod } from '../model/costed-period';
import type { MixModel } from '../model/mix/mix-model';
import type { SetMenus } from '../model/mix/spread-set-menus';
import { type MenuMix, menuMix } from '../reports/menu-mix';

/** Of each costed period its mixes; they go when it goes. */
const kept = new WeakMap<CostedPeriod, Map<string, MenuMix>>();

/**
 * The mix of a period by one model, with the verdict of the period before it: the resamples are drawn once, however many pages and
 * answers ask for them.
 */
export function keptMix(
  now: CostedPeriod,
  before: CostedPeriod,
  section: string | null,
  model: MixModel,
  setMenus: SetMenus = 'section',
): MenuMix {
  const { from, to } = before.range;
  return once(now, `${model.name} ${setMenus} ${from} ${to} ${section ?? '\n'}`, () =>
    menuMix(now, { section, model, setMenus, previous: alone(before, section, model, setMenus) }),
  );
}

function alone(period: CostedPeriod, section: string | null, model: MixModel, setMenus: SetMenus): MenuMix {
  return once(period, `${model.name} ${setMenus} alone ${section ?? '\n'}`, () =>
    menuMix(period, { section, model, setMenus }),
  );
}

function once(period: CostedPeriod, key: string, work: () => MenuMix): MenuMix {
  const mixes = kept.get(period) ?? new Map<string, MenuMix>();
  kept.set(period, mixes);
  const known = mixes.get(key);
  if (known) return known;
  const mix = work();
  mixes.set(key, mix);
  return mix;
}

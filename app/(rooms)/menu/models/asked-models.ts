import type { Route } from 'next';
import { cache } from 'react';
import { menuModelsAnswer } from '@/lib/answers/menu-models';
import { currentAsker } from '@/lib/session/asker';
import type { Asked } from '../asked';

/** The answer of a request, asked for once however many panels need it. */
export const modelsOf = cache((venue: string | null, month: string, section: string | null) =>
  menuModelsAnswer(currentAsker(), { venue, month, section }),
);

/** The address of the models for these, leaving out what is not said. */
export function modelsHref({ venue, month, section }: Asked): Route {
  const query = new URLSearchParams({ month, ...(venue && { venue }), ...(section && { section }) });
  return `/menu/models?${query}` as Route;
}

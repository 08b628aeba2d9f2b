import { z } from 'zod';
import { openDatabase } from '../db/database';
import { venuesSeenBy } from '../db/venues';
import type { Asker } from '../session/asker';

/** GET /api/v1/venues */
export const venuesShape = z.strictObject({ venues: z.array(z.strictObject({ id: z.number(), name: z.string() })) });

export type VenuesAnswer = z.infer<typeof venuesShape>;

/** The venues that the asker may see, by name. */
export async function venuesAnswer(asker: Asker): Promise<VenuesAnswer> {
  const seen = await venuesSeenBy(await openDatabase(), asker.person);
  return { venues: seen.map(({ id, name }) => ({ id, name })) };
}

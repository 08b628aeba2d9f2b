/** The parts of the address of a question about a venue's period. */
export interface PeriodParams {
  readonly params: Promise<{ readonly venue: string; readonly month: string }>;
}

/** Venue and month out of the address, and the options out of its query. */
export async function askedOf(request: Request, { params }: PeriodParams) {
  const { venue, month } = await params;
  const query = new URL(request.url).searchParams;
  return { venue: decoded(venue), month: decoded(month), section: query.get('section'), model: query.get('model') };
}

/** Next hands the parts of a path over as they came; a stray % stays as it is. */
export function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

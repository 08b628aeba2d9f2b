import { GOAL_VALUE } from './goal-value';
import { KASAVANA_SMITH } from './kasavana-smith';
import { MILLER } from './miller';
import type { MixModel, ModelName } from './mix-model';
import { PAVESIC } from './pavesic';
import { WITH_LABOUR } from './with-labour';

/** Every model, by name, the one that is asked for first where none is named. */
export const MIX_MODELS: Readonly<Record<ModelName, MixModel>> = {
  'kasavana-smith': KASAVANA_SMITH,
  miller: MILLER,
  pavesic: PAVESIC,
  'goal-value': GOAL_VALUE,
  labour: WITH_LABOUR,
};

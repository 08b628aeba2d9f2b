import type { MenuModelsAnswer } from '../answers/menu-models-shape';
import { plainText } from '../format/phrase';
import { textTable } from '../format/text-table';
import { agreeCell, classCell, MODEL_HEADS, MODELS, modelsBasis, modelsSentences } from '../format/words/menu-models';
import { issueLines } from './plain-tables';

/** The models side by side for a terminal: the sentences of the page, the classes, what is missing. */
export function menuModelsTable(answer: MenuModelsAnswer): string {
  const heads = [MODELS.dish, ...answer.models.map((model) => MODEL_HEADS[model][0]), MODELS.agreeHead];
  const rows = answer.items.map((item) => [
    item.item,
    ...item.classes.map((standing) => {
      const { name, sure } = classCell(standing, answer.locale);
      return sure === '' ? name : `${name} (${sure})`;
    }),
    agreeCell(item),
  ]);
  const head = `${plainText(modelsSentences(answer))}\n${modelsBasis(answer).join(' · ')}`;
  const columns = heads.map((name) => ({ head: name, side: 'left' as const }));
  return `${head}\n\n${textTable(columns, rows)}${issueLines(answer.issues)}`;
}

import { partText } from '../../messages';
import { sayHelp } from '../../state/help/helpText';
import { TOPIC_IDS, TOPICS, type TopicId } from '../../state/help/topics';
import { TOPIC_GROUPS, type TopicGroup } from '../../state/help/topicTypes';

/**
 * The entries that a search finds, those whose name begins with it first, then those that hold it in name, symbol or other
 * words, then those that say it. All of them, in the order of the glossary, for an empty search.
 */
export function searchTopics(search: string): readonly TopicId[] {
  const wanted = plain(search);
  if (wanted === '') return TOPIC_IDS;
  const ranked = TOPIC_IDS.map((id) => ({ id, rank: rankOf(id, wanted) }));
  return ranked
    .filter(({ rank }) => rank < NOT_FOUND)
    .toSorted((a, b) => a.rank - b.rank)
    .map(({ id }) => id);
}

const NOT_FOUND = 4;

function rankOf(id: TopicId, wanted: string): number {
  const name = plain(sayHelp(`help.${id}.name`));
  if (name.startsWith(wanted)) return 0;
  if (name.includes(wanted)) return 1;
  const { symbol = '', also = '' } = TOPICS[id];
  const inLanguage = partText(`help.${id}.also`, '');
  if (plain(`${symbol} ${also} ${inLanguage}`).includes(wanted)) return 2;
  return plain(sayHelp(`help.${id}.what`)).includes(wanted) ? 3 : NOT_FOUND;
}

/** Small letters, signs that nobody types as what they type. */
function plain(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replaceAll('\u2212', '-')
    .replaceAll(/\s+/g, ' ')
    .replaceAll(' - ', '-')
    .replaceAll('_', '');
}

/** The entries in their groups, empty groups left out. */
export function inGroups(
  ids: readonly TopicId[],
): readonly { readonly group: TopicGroup; readonly ids: readonly TopicId[] }[] {
  return TOPIC_GROUPS.map((group) => ({
    group,
    ids: ids.filter((id) => TOPICS[id].group === group),
  })).filter((one) => one.ids.length > 0);
}

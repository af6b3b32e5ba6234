// A plugin of StrykerJS: leaves out words. Whether an error is thrown or a file refused is mutated, and so are the
// numbers in the sentence; what the sentence says around them is read by people and checked by eye.
import { declareValuePlugin, PluginKind } from '@stryker-mutator/api/plugin';

const ERRORS = /^(Range|Type|Syntax)?Error$/;
const THROWN = 'the words of an error that only a mistake in the program can throw';
const TOLD = 'the words of a message about a file, checked by eye';

function isThrown(parent) {
  return parent.isNewExpression() && ERRORS.test(parent.node.callee.name ?? '');
}

/**
 * Calls with a piece of a message, and which of their arguments it is: `malformed(format, detail)` ends the sentence "the
 * file cannot be read because it ...", the others name what it is that is not there.
 */
const TELLING = new Map([
  ['malformed', 1],
  ['told', 1],
  ['need', 1],
  ['itemOf', 2],
  ['countOf', 2],
]);

function tellingCall(parent) {
  return parent.isCallExpression() && TELLING.has(parent.node.callee.name);
}

const messages = {
  shouldIgnore(path) {
    if (!path.isStringLiteral() && !path.isTemplateLiteral()) return undefined;
    if (path.findParent(isThrown)) return THROWN;
    const call = path.findParent(tellingCall);
    if (!call) return undefined;
    const isDetail = path.key === TELLING.get(call.node.callee.name);
    return isDetail || path.parentPath?.isConditionalExpression() ? TOLD : undefined;
  },
};

export const strykerPlugins = [declareValuePlugin(PluginKind.Ignore, 'messages', messages)];

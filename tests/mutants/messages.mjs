// A plugin of StrykerJS: leaves out words. Whether an error is thrown or a file refused is mutated, and so are the
// numbers in the sentence; what the sentence says around them is read by people and checked by eye.
import { declareValuePlugin, PluginKind } from '@stryker-mutator/api/plugin';

const ERRORS = /^(Range|Type|Syntax)?Error$/;
const THROWN = 'the words of an error that only a mistake in the program can throw';
const TOLD = 'the words of a message about a file, checked by eye';

function isThrown(parent) {
  return parent.isNewExpression() && ERRORS.test(parent.node.callee.name ?? '');
}

/** `malformed(format, detail)` ends the sentence "the file cannot be read because it ...". */
function isTold(parent) {
  return parent.isCallExpression() && ['malformed', 'told'].includes(parent.node.callee.name);
}

const messages = {
  shouldIgnore(path) {
    if (!path.isStringLiteral() && !path.isTemplateLiteral()) return undefined;
    if (path.findParent(isThrown)) return THROWN;
    const isDetail = path.key === 1 || path.parentPath?.isConditionalExpression();
    return isDetail && path.findParent(isTold) ? TOLD : undefined;
  },
};

export const strykerPlugins = [declareValuePlugin(PluginKind.Ignore, 'messages', messages)];

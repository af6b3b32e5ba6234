// A plugin of StrykerJS: leaves out what only a programmer reads, the text of a thrown error.
import { declareValuePlugin, PluginKind } from '@stryker-mutator/api/plugin';

const ERRORS = /^(Range|Type|Syntax)?Error$/;
const REASON = 'the words of an error that only a mistake in the program can throw';

/** Texts and templates inside `new Error(...)`: whether it is thrown is mutated, what it says is not. */
const messages = {
  shouldIgnore(path) {
    if (!path.isStringLiteral() && !path.isTemplateLiteral()) return undefined;
    const thrown = path.findParent(
      (parent) => parent.isNewExpression() && ERRORS.test(parent.node.callee.name ?? ''),
    );
    return thrown ? REASON : undefined;
  },
};

export const strykerPlugins = [declareValuePlugin(PluginKind.Ignore, 'messages', messages)];

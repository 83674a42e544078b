// The usual package of this name reads browser support tables that are CC-BY-4.0, which the OSI has not approved. The
// mutation tester's parser loads it to ask for target browsers, and there are none: it parses TypeScript for Node, and
// names no browsers. Nobody else may take an empty list for an answer.
/** @param {unknown} [queries] */
function browserslist(queries) {
  if (Array.isArray(queries) && queries.length === 0) return [];
  throw new Error(
    `Expected no browsers to be asked for, received ${JSON.stringify(queries) ?? 'the default ones'}: ` +
      'scripts/substitutes/browserslist knows none. Ask for none, or use a tool that needs no browser tables.',
  );
}
browserslist.loadConfig = () => undefined;
browserslist.findConfigFile = () => undefined;
browserslist.findConfig = () => undefined;
module.exports = browserslist;

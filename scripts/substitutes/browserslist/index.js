// The usual package of this name reads browser support tables that are CC-BY-4.0, which the OSI has not approved. The
// mutation tester's parser loads it to ask for target browsers, and there are none: it parses TypeScript for Node.
function browserslist() {
  return [];
}
browserslist.loadConfig = () => undefined;
browserslist.findConfigFile = () => undefined;
browserslist.findConfig = () => undefined;
module.exports = browserslist;

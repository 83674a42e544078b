// The usual package of this name carries licence lists that are CC-BY-3.0 and CC0-1.0, which the OSI has not approved.
// Its one caller here asks whether a package's own licence field looks sound, only to print a warning; a well-formed
// expression is enough for that.
/** @param {unknown} expression */
module.exports = function validateLicense(expression) {
  const sound = /^\(?[A-Za-z0-9.+-]+(?: (?:AND|OR|WITH) \(?[A-Za-z0-9.+-]+\)?)*\)?$/.test(String(expression));
  return sound
    ? { validForOldPackages: true, validForNewPackages: true, spdx: true }
    : { validForOldPackages: false, validForNewPackages: false, warnings: ['license should be an SPDX expression'] };
};

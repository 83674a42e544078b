/**
 * What every error message is: one or more whole sentences that say what is wrong and what to do, and no line of a log.
 * What was typed may hold any character, so only the ends are looked at.
 */
export const wellSaid = /^(?!Expected )(?!.*, received )[A-Z“‘\d-][\s\S]*[.:] [\s\S]*[.?]$/;

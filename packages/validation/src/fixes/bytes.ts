/** Mechanical repairs of a text; each gives back the very text where there is nothing to mend. */
export const withoutByteOrderMark = (text: string): string => (text.charCodeAt(0) === 0xfeff ? text.slice(1) : text);

export const withLineFeeds = (text: string): string => (text.includes("\r") ? text.replace(/\r\n?/g, "\n") : text);

export const withFinalNewline = (text: string): string => (text === "" ? text : `${text.replace(/\n+$/, "")}\n`);

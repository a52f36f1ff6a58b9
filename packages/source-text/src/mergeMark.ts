/** The marks that a version control leaves where two changes meet. */
export function isMergeMark(word: string): boolean {
  return /^(?:<{7}|={7}|>{7}|\|{7})$/.test(word);
}

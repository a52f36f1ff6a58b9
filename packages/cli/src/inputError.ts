/** What was asked for cannot be done, and the person asking can put it right. Printed without "internal error". */
export class InputError extends Error {
  override name = "InputError";
  /** The file that it is about. */
  readonly file: string;
  /** What would work instead. */
  readonly help: string | undefined;

  constructor(file: string, message: string, help?: string) {
    super(message);
    this.file = file;
    this.help = help;
  }
}

const REFUSALS: Readonly<Record<string, string>> = {
  ENOENT: "no such file or folder",
  ENOTDIR: "a part of this path is a file, not a folder",
  EACCES: "permission denied",
  EPERM: "permission denied",
  EISDIR: "this is a folder",
  ENOSPC: "no room left on the disk",
  EROFS: "the disk is read-only",
  ELOOP: "the link leads in a circle",
  ENAMETOOLONG: "the name is too long",
};

/**
 * Does `work` on a file and turns the operating system's refusals into plain words.
 *
 * @param file what the message names
 * @throws InputError for a refusal; everything else as it comes
 */
export function onFile<T>(file: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    const code = (error as NodeJS.ErrnoException | null)?.code;
    throw typeof code === "string" && code.startsWith("E") && !code.startsWith("ERR_")
      ? new InputError(file, REFUSALS[code] ?? code)
      : error;
  }
}

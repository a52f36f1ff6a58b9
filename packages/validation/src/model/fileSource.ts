/** A file that may be looked at. */
export interface FileEntry {
  /** From the repository's root, forward slashes. */
  path: string;
  /** True for a symbolic link: its target is not read. */
  link: boolean;
  bytes: number;
}

/** Where files come from: the disk, or a map in a test. */
export interface FileSource {
  /** Every file below datasets/, in the order of paths. */
  list(): Iterable<FileEntry>;
  /** Content of a file of the list. @throws Error when it cannot be read */
  read(path: string): Uint8Array;
}

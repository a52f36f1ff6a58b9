import { spawnSync } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join, normalize, sep } from "node:path";

/** The revision cannot be read, in words for whoever named it. */
export class RevisionError extends Error {
  override name = "RevisionError";
}

const LARGEST_OUTPUT = 512 * 1024 * 1024;

function git(root: string, args: readonly string[], input?: Buffer): Buffer {
  const done = spawnSync("git", args, { cwd: root, maxBuffer: LARGEST_OUTPUT, ...(input === undefined ? {} : { input }) });
  if (done.error !== undefined) throw new RevisionError(`git could not be run: ${done.error.message}`);
  if (done.status !== 0) throw new RevisionError(done.stderr.toString("utf8").trim() || `git ${args[0]} ended with ${done.status}`);
  return done.stdout;
}

/**
 * The commit that a revision names.
 *
 * @param root folder of the repository
 * @throws RevisionError when it looks like an option, or names no commit
 */
export function commitOf(root: string, revision: string): string {
  if (revision === "" || revision.startsWith("-"))
    throw new RevisionError(`"${revision}" is no revision: it may not be empty or begin with a hyphen`);
  try {
    return git(root, ["rev-parse", "--verify", "--quiet", "--end-of-options", `${revision}^{commit}`])
      .toString("utf8")
      .trim();
  } catch {
    throw new RevisionError(`no commit is called "${revision}" here; a shallow clone may lack it (git fetch --depth=1 origin COMMIT)`);
  }
}

interface TreeFile {
  object: string;
  path: string;
}

/** Ordinary files below some folders of a commit. Links and submodules are passed over: they point out of the tree. */
function filesOf(root: string, commit: string, folders: readonly string[]): TreeFile[] {
  const listed = git(root, ["ls-tree", "-r", "-z", "--full-tree", commit, "--", ...folders]).toString("utf8");
  return listed.split("\0").flatMap((entry) => {
    const [, mode, type, object, path] = /^(\d+) (\w+) ([0-9a-f]+)\t(.+)$/s.exec(entry) ?? [];
    return type === "blob" && (mode === "100644" || mode === "100755") && object && path ? [{ object, path }] : [];
  });
}

/** Contents in the order asked, from one `git cat-file --batch`. */
function contentsOf(root: string, files: readonly TreeFile[]): Buffer[] {
  if (files.length === 0) return [];
  const output = git(root, ["cat-file", "--batch"], Buffer.from(files.map(({ object }) => `${object}\n`).join("")));
  let at = 0;
  return files.map(({ path }) => {
    const end = output.indexOf(0x0a, at);
    const size = Number(output.subarray(at, end).toString("utf8").split(" ")[2]);
    if (!Number.isInteger(size)) throw new RevisionError(`git does not have ${path} of that commit`);
    const content = output.subarray(end + 1, end + 1 + size);
    at = end + 1 + size + 1;
    return content;
  });
}

/**
 * Writes some folders of a commit below another folder, without touching the working tree or the index.
 *
 * @param into folder that takes them
 * @throws RevisionError when a path of the commit leads out of `into`
 */
export function extractFolders(root: string, commit: string, folders: readonly string[], into: string): void {
  const files = filesOf(root, commit, folders);
  for (const [index, content] of contentsOf(root, files).entries()) {
    const path = normalize(files[index]!.path);
    if (path.startsWith(`..${sep}`) || path.startsWith(sep)) throw new RevisionError(`${path} leads out of the repository`);
    mkdirSync(dirname(join(into, path)), { recursive: true });
    writeFileSync(join(into, path), content);
  }
}

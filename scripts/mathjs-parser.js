// What the bundle takes in place of the whole library: the parser, and of its modules only those that it needs.
import { create, parseDependencies } from "mathjs/number";

export default { create, parseDependencies };

import facts from "../package.json" with { type: "json" };

/** Version of this command. */
export const version: string = facts.version;

import { expect, it } from "vitest";
import { mayBeLong } from "./wordCount.ts";

const words = (count: number): string => Array.from({ length: count }, () => "word").join(" ");

it.each([
  ["a sentence of 41 words", `${words(41)}.`],
  ["the same behind a short one", `Short. ${words(41)}`],
  ["marks inside that end nothing", `${words(20)} 1.5 a:b ${words(20)}`],
  ["words between line ends", words(41).replaceAll(" ", "\n")],
  ["words between blanks of other kinds", words(41).replaceAll(" ", "\u2003")],
])("%s may be long", (_name, text) => expect(mayBeLong(text)).toBe(true));

it.each([
  ["forty words", `${words(40)}.`],
  ["two sentences of thirty words", `${words(30)}. ${words(30)}`],
  ["three parts of one", `${words(30)}: ${words(30)}; ${words(30)}`],
])("%s are not", (_name, text) => expect(mayBeLong(text)).toBe(false));

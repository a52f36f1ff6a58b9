/** UTF-16 offset of a count of UTF-8 bytes; counts must be asked for in rising order. */
export function byteCounter(text: string): (bytes: number) => number {
  let offset = 0;
  let counted = 0;
  return (bytes) => {
    while (counted < bytes && offset < text.length) {
      const code = text.codePointAt(offset)!;
      counted += code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
      offset += code < 0x10000 ? 1 : 2;
    }
    return offset;
  };
}

/** Tags as they are kept: no blanks around them, none empty, each once, in the order they were written. */
export function keptTags(tags: readonly string[]): readonly string[] {
  return [...new Set(tags.map((tag) => tag.trim()).filter((tag) => tag !== ''))];
}

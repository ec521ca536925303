/** Said once with any list of findings. */
export const cautions: readonly string[] = [
  "These results help a qualified person, they do not replace one.",
  "They hold for the piece standing still on stands as drawn; lifting it, moving it and turning it over are outside this program.",
  "What was not checked is said with the verdict and is for somebody to look at.",
];

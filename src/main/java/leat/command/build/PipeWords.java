package leat.command.build;

/** What the flags of a pipe mean, for head and pump alike. */
final class PipeWords {
  static final String BORE =
      "inside diameter of the pipe; `head` takes several, one behind the other";
  static final String LENGTH = "length of the pipe, one for each bore";
  static final String ROUGHNESS = "roughness of the pipe's wall, one or one for each bore";
  static final String RIDGES =
      "distance from ridge to ridge of a corrugated hose, one or one for each bore";
  static final String K = "sum of the loss factors of the pipe's fittings, one for each bore";
  static final String BORES =
      "table over the tubes that one can buy, in place of the riser or the last bore";

  private PipeWords() {}
}

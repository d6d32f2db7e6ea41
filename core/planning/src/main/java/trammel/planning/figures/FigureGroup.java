package trammel.planning.figures;

import java.util.List;

/**
 * Figures of one subject. They are plain data with one method that works all of them out: a class
 * or a function object for each would cost every run that lists them.
 */
interface FigureGroup {
  /** The subject. */
  String title();

  /** The figures, in the order in which they are listed. */
  List<Figure> figures();

  /**
   * Works out one of the figures.
   *
   * @throws IllegalArgumentException if the inputs do not go together
   */
  void work(String name, FigureInputs given, FigureAnswers answers);

  /** A figure that the group lists but does not know. */
  static IllegalStateException unknown(String name) {
    return new IllegalStateException("The figure (" + name + ") is listed but not worked out.");
  }
}

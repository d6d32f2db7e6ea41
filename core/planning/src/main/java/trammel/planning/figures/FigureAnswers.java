package trammel.planning.figures;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Collects the values of a figure in the order in which they are worked out. */
final class FigureAnswers {
  private final Figure figure;
  private final List<FigureAnswer> answers = new ArrayList<>();

  FigureAnswers(Figure figure) {
    this.figure = figure;
  }

  /**
   * @throws IllegalArgumentException if the value is not a finite number
   */
  FigureAnswers put(String key, double inside) {
    FigureOutput output = figure.output(key);
    if (!Double.isFinite(inside)) {
      throw new IllegalArgumentException(
          "The "
              + output.title()
              + " of "
              + figure.name()
              + " comes out as "
              + inside
              + " with these values; only a finite number is of use. Check their units and sizes.");
    }
    answers.add(new FigureAnswer.Quantity(output, inside));
    return this;
  }

  /**
   * @param otherwise what is said where there is no value
   */
  FigureAnswers put(String key, OptionalDouble inside, String otherwise) {
    return inside.isPresent() ? put(key, inside.getAsDouble()) : put(key, otherwise);
  }

  FigureAnswers put(String key, BigDecimal amount) {
    answers.add(new FigureAnswer.Amount(figure.output(key), amount));
    return this;
  }

  FigureAnswers put(String key, String word) {
    answers.add(new FigureAnswer.Word(figure.output(key), word));
    return this;
  }

  List<FigureAnswer> all() {
    return List.copyOf(answers);
  }
}

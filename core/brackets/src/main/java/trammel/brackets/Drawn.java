package trammel.brackets;

import java.util.function.Supplier;
import trammel.engine.quantity.Phrase;

/** Turns what the shapes of mounts refuse into refusals of the layout. */
public final class Drawn {
  private Drawn() {}

  /**
   * What is drawn.
   *
   * @throws UnworkableLayoutException in the words of the shape that cannot be drawn
   */
  public static <T> T orRefused(Supplier<T> drawing) {
    try {
      return drawing.get();
    } catch (IllegalArgumentException impossible) {
      throw new UnworkableLayoutException(Phrase.text(impossible.getMessage()));
    }
  }
}

package trammel.cutting.sheets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A way to fill sheets by one arrangement that is asked the same again and again: what it answered
 * before it answers at once.
 */
final class RememberedFill implements SheetFill {
  private final SheetFill fill;
  private final Arrangement arrangement;
  private final List<Answer> answers = new ArrayList<>();

  private record Answer(
      int sheetWidth, int sheetHeight, int[] asked, int[] rest, Layout layout, long area) {}

  /**
   * @param fill what fills the sheets
   * @param arrangement the only arrangement that will be given; it must not change meanwhile
   */
  RememberedFill(SheetFill fill, Arrangement arrangement) {
    this.fill = fill;
    this.arrangement = arrangement;
  }

  @Override
  public long fill(
      int sheetWidth, int sheetHeight, Arrangement given, int[] remaining, Layout layout) {
    if (given != arrangement) {
      throw new IllegalArgumentException("The answers belong to another arrangement.");
    }
    for (Answer answer : answers) {
      if (answer.sheetWidth == sheetWidth
          && answer.sheetHeight == sheetHeight
          && Arrays.equals(answer.asked, remaining)) {
        System.arraycopy(answer.rest, 0, remaining, 0, remaining.length);
        layout.takeFrom(answer.layout);
        return answer.area;
      }
    }
    int[] asked = remaining.clone();
    long area = fill.fill(sheetWidth, sheetHeight, given, remaining, layout);
    answers.add(new Answer(sheetWidth, sheetHeight, asked, remaining.clone(), layout.copy(), area));
    return area;
  }
}

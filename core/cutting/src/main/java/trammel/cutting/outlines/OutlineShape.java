package trammel.cutting.outlines;

/** A form turned one way: its convex pieces and the rectangle around the true outline; mm. */
final class OutlineShape {
  final OutlineForm form;
  final OutlineTurn turn;
  final double minX;
  final double minY;
  final double maxX;
  final double maxY;

  /** Its place in the list of all shapes of a nest. */
  final int number;

  OutlineShape(OutlineForm form, OutlineTurn turn, int number) {
    OutlineBox box = OutlineBox.of(form.part, turn);
    this.form = form;
    this.turn = turn;
    this.minX = box.minX;
    this.minY = box.minY;
    this.maxX = box.maxX;
    this.maxY = box.maxY;
    this.number = number;
  }

  double width() {
    return maxX - minX;
  }

  double height() {
    return maxY - minY;
  }
}

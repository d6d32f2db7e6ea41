package trammel.engine.checks;

import trammel.engine.layout.Chassis;

/** Difference between the wheelbases measured left and right. */
record WheelbaseSquare(String id, String title) implements Check {

  @Override
  public Measure measure() {
    return Measure.LENGTH;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    Chassis chassis = analysis.layout().chassis();
    double off = chassis.wheelbaseLeftMm() - chassis.wheelbaseRightMm();
    String where = off > 0 ? "left is the longer" : "right is the longer";
    return new Reading.Value(Math.abs(off), off == 0 ? "square" : where);
  }
}

package trammel.testsupport.vehicle;

/**
 * Something that the suspension must stay clear of, at ride, in inches.
 *
 * @param name what the shop calls it
 * @param kind the job file's word for what it is
 * @param isPipe a cylinder along the body, or else a box
 * @param backIn its rear end, ahead of the axle
 * @param frontIn its front end
 * @param rightIn its right side; of a pipe, where its rear end lies
 * @param leftIn its left side; of a pipe, where its front end lies
 * @param lowIn its underside; of a pipe, the middle of its rear end
 * @param highIn its top; of a pipe, the middle of its front end
 * @param diameterIn outside diameter of a pipe
 */
record Obstruction(
    String name,
    String kind,
    boolean isPipe,
    double backIn,
    double frontIn,
    double rightIn,
    double leftIn,
    double lowIn,
    double highIn,
    double diameterIn) {
  Obstruction {
    if (!(backIn < frontIn && (isPipe || rightIn < leftIn && lowIn < highIn))) {
      throw new IllegalArgumentException(
          name
              + " has no room in it: "
              + backIn
              + " to "
              + frontIn
              + ", "
              + rightIn
              + " to "
              + leftIn
              + ", "
              + lowIn
              + " to "
              + highIn
              + " in. Put the lesser number first.");
    }
  }

  static Obstruction box(
      String name,
      String kind,
      double backIn,
      double frontIn,
      double rightIn,
      double leftIn,
      double lowIn,
      double highIn) {
    return new Obstruction(name, kind, false, backIn, frontIn, rightIn, leftIn, lowIn, highIn, 0);
  }

  static Obstruction pipe(
      String name, double backIn, double frontIn, double leftIn, double upIn, double diameterIn) {
    return new Obstruction(
        name, "exhaust", true, backIn, frontIn, leftIn, leftIn, upIn, upIn, diameterIn);
  }
}

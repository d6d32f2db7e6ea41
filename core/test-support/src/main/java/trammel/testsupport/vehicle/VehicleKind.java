package trammel.testsupport.vehicle;

import java.util.List;

/**
 * Kinds of vehicle that are brought to a shop, with the ranges of their measurements in inches and
 * pounds. {@code docs/plausible-vehicles.md} has the source of each.
 */
public enum VehicleKind {
  /** Half-ton pickup on a ladder frame. */
  PICKUP(
      "Pickup, ladder frame",
      new Body(Range.of(108, 145), Range.of(3600, 5200), Range.of(0.38, 0.46), Range.of(24, 29)),
      new Frame(0.8, Range.of(33, 44), Range.of(5, 7), Range.of(2, 3), Range.of(0.12, 0.22)),
      new Wheels(List.of(225, 235, 245, 255, 265, 275), List.of(60, 65, 70), List.of(15, 16, 17)),
      Range.of(1, 5),
      Range.of(60, 67)),

  /** Two- or four-door sedan, body on frame. */
  SEDAN(
      "Sedan, body on frame",
      new Body(Range.of(104, 122), Range.of(3000, 4300), Range.of(0.43, 0.48), Range.of(20, 23.5)),
      new Frame(0.3, Range.of(36, 45), Range.of(3.5, 5), Range.of(2, 3), Range.of(0.1, 0.14)),
      new Wheels(List.of(205, 215, 225, 235, 245), List.of(60, 65, 70), List.of(14, 15, 16)),
      Range.of(1.5, 5),
      Range.of(56, 63)),

  /** Light open car on narrow rails. */
  ROADSTER(
      "Roadster, narrow rails",
      new Body(Range.of(90, 112), Range.of(1900, 2900), Range.of(0.47, 0.54), Range.of(16.5, 20)),
      new Frame(0.25, Range.of(26, 35), Range.of(3, 5), Range.of(1.5, 2.5), Range.of(0.1, 0.19)),
      new Wheels(List.of(195, 205, 215, 225, 235), List.of(60, 65, 70), List.of(15, 16)),
      Range.of(1.5, 4.5),
      Range.of(50, 58)),

  /** Panel or passenger van on a frame. */
  VAN(
      "Van, ladder frame",
      new Body(Range.of(110, 145), Range.of(4000, 6200), Range.of(0.42, 0.5), Range.of(27, 33)),
      new Frame(0.7, Range.of(34, 46), Range.of(5, 7.5), Range.of(2, 3), Range.of(0.13, 0.22)),
      new Wheels(List.of(215, 225, 235, 245, 265), List.of(65, 70, 75), List.of(15, 16)),
      Range.of(2, 6),
      Range.of(60, 68));

  private final String words;
  private final Body body;
  private final Frame frame;
  private final Wheels wheels;
  private final Range railOverAxleIn;
  private final Range flangeToFlangeIn;

  VehicleKind(
      String words,
      Body body,
      Frame frame,
      Wheels wheels,
      Range railOverAxleIn,
      Range flangeToFlangeIn) {
    this.words = words;
    this.body = body;
    this.frame = frame;
    this.wheels = wheels;
    this.railOverAxleIn = railOverAxleIn;
    this.flangeToFlangeIn = flangeToFlangeIn;
  }

  /** What the job file calls the vehicle. */
  String words() {
    return words;
  }

  Body body() {
    return body;
  }

  Frame frame() {
    return frame;
  }

  Wheels wheels() {
    return wheels;
  }

  /** From the top of the axle tube up to the rail's underside, at the ride height wanted. */
  Range railOverAxleIn() {
    return railOverAxleIn;
  }

  Range flangeToFlangeIn() {
    return flangeToFlangeIn;
  }

  /**
   * What the scales and the long tape say.
   *
   * @param wheelbaseIn front wheel's centre to rear wheel's centre
   * @param weightLb all four wheels, ready to drive
   * @param rearShare share of it on the rear wheels
   * @param centreOfGravityIn height of the centre of gravity
   */
  record Body(Range wheelbaseIn, Range weightLb, Range rearShare, Range centreOfGravityIn) {}

  /**
   * The rails.
   *
   * @param channelShare how many of a hundred such frames, over a hundred, are open channels
   * @param outsideIn over both rails at the axle
   * @param depthIn height of the section
   * @param flangeIn width of the section
   * @param wallIn thickness
   */
  record Frame(double channelShare, Range outsideIn, Range depthIn, Range flangeIn, Range wallIn) {}

  /**
   * Metric tyre codes: widths in mm, heights of the section in percent, rims in inches.
   *
   * @param widthsMm nominal section widths
   * @param aspects height of the section in percent of its width
   * @param rimsIn nominal rim diameters
   */
  record Wheels(List<Integer> widthsMm, List<Integer> aspects, List<Integer> rimsIn) {}
}

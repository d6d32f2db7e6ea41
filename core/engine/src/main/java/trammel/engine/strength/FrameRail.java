package trammel.engine.strength;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.quantity.Given;

/**
 * A frame rail as a section: an open channel, or a channel boxed by a plate over the tips of its
 * flanges. X runs from the back of the web toward the tips, Y up from the underside.
 *
 * @param channel the channel
 * @param boxingPlateMm thickness of the plate that closes the open side, mm, 0 for an open channel,
 *     up to 50
 */
public record FrameRail(ChannelSection channel, double boxingPlateMm) {
  /**
   * Checks the rail.
   *
   * @throws IllegalArgumentException if the plate is outside its range
   */
  public FrameRail {
    Given.within("boxing plate", boxingPlateMm, 0, 50, "mm", "Give 0 for an open channel.");
    if (boxingPlateMm > 0 && boxingPlateMm < 0.1) {
      throw Given.refusal(
          "boxing plate",
          Given.text(boxingPlateMm) + " mm",
          "0 or at least 0.1 mm",
          "Give 0 for an open channel.");
    }
  }

  /**
   * An open channel rail.
   *
   * @param channel the channel
   * @return the rail
   */
  public static FrameRail open(ChannelSection channel) {
    return new FrameRail(channel, 0);
  }

  /**
   * The same rail boxed.
   *
   * @param plateMm thickness of the boxing plate, mm, 0.1 to 50
   * @return the boxed rail
   * @throws IllegalArgumentException if the plate is outside its range
   */
  public FrameRail boxedWith(double plateMm) {
    return new FrameRail(channel, plateMm);
  }

  /**
   * Whether the open side is closed.
   *
   * @return true for a boxed rail
   */
  public boolean boxed() {
    return boxingPlateMm > 0;
  }

  /**
   * Overall width with the boxing plate.
   *
   * @return width, mm
   */
  public double widthMm() {
    return channel.flangeWidthMm() + boxingPlateMm;
  }

  /**
   * The whole section.
   *
   * @return the section
   */
  public BuiltUpSection section() {
    return new BuiltUpSection(partsAbove(0));
  }

  /** What is left of the rail above a level, Y up from the underside. */
  List<PlateRectangle> partsAbove(double levelMm) {
    double depth = channel.depthMm();
    double web = channel.webMm();
    double flange = channel.flangeMm();
    double reach = channel.flangeWidthMm() - web;
    List<PlateRectangle> parts = new ArrayList<>(4);
    addAbove(parts, levelMm, 0, 0, web, depth);
    addAbove(parts, levelMm, web, depth - flange, reach, flange);
    addAbove(parts, levelMm, web, 0, reach, flange);
    if (boxed()) {
      addAbove(parts, levelMm, channel.flangeWidthMm(), 0, boxingPlateMm, depth);
    }
    return parts;
  }

  private static void addAbove(
      List<PlateRectangle> parts,
      double levelMm,
      double leftMm,
      double bottomMm,
      double widthMm,
      double heightMm) {
    double cutBottomMm = Math.max(bottomMm, levelMm);
    double leftOver = bottomMm + heightMm - cutBottomMm;
    if (leftOver > THINNEST_LEFT_MM) {
      parts.add(new PlateRectangle(leftMm, cutBottomMm, widthMm, leftOver));
    }
  }

  /** A remainder thinner than this is grinding dust, mm. */
  private static final double THINNEST_LEFT_MM = 0.01;
}

package trammel.brackets.work;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.strength.WeldGroup;
import trammel.engine.strength.WeldLine;

/** Collects the welds that hold a bracket, as lines in one plane. */
public final class FootWelds {
  /** Straight pieces for each arc of a saddle: its length comes out within 0.2 %. */
  private static final int ARC_PIECES = 12;

  private final List<WeldLine> lines = new ArrayList<>();

  /**
   * Straight welds that look alike along the plane's normal: faces of a plate, plates of a pair.
   */
  public FootWelds line(int alike, double startXMm, double startYMm, double endXMm, double endYMm) {
    for (int i = 0; i < alike; i++) {
      lines.add(new WeldLine(startXMm, startYMm, endXMm, endYMm));
    }
    return this;
  }

  /** Welds along part of a circle about the origin. */
  public FootWelds arc(int alike, double radiusMm, double middleRad, double wrapRad) {
    for (int i = 0; i < ARC_PIECES; i++) {
      double fromRad = middleRad + wrapRad * ((double) i / ARC_PIECES - 0.5);
      double toRad = middleRad + wrapRad * ((double) (i + 1) / ARC_PIECES - 0.5);
      line(
          alike,
          radiusMm * Math.cos(fromRad),
          radiusMm * Math.sin(fromRad),
          radiusMm * Math.cos(toRad),
          radiusMm * Math.sin(toRad));
    }
    return this;
  }

  public WeldGroup group() {
    return new WeldGroup(lines);
  }
}

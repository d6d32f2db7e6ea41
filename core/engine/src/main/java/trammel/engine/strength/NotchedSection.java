package trammel.engine.strength;

import java.util.ArrayList;
import java.util.List;

/**
 * What a rail can carry at one station along its notch, next to what the whole rail can: bending
 * upright, shear upright and twist. Plates and rail are taken as one piece.
 *
 * <p>Where a strip slopes it counts for bending with its area times the third power of the cosine
 * of its slope (flange of a tapered beam: strain along the slope falls with the square, the share
 * of its force that lies along the rail with the cosine). Shear is V Q/(I b); twist is Bredt's for
 * a closed section and the sum of b t³/3 for an open one. Sources: Timoshenko, Strength of
 * Materials; Bredt, from memory.
 */
public final class NotchedSection {
  private static final double LEAST_MM2 = 1e-3;

  /** Width and heights of one upright rectangle (mm). */
  private record Part(double widthMm, double fromMm, double toMm) {
    double areaMm2() {
      return widthMm * (toMm - fromMm);
    }

    double middleMm() {
      return (fromMm + toMm) / 2;
    }
  }

  private final List<Part> parts;
  private final double areaMm2;
  private final double centroidMm;
  private final double secondMm4;
  private final double twist;

  private NotchedSection(List<Part> parts, double twist) {
    this.parts = parts;
    this.twist = twist;
    double area = 0;
    double first = 0;
    for (Part part : parts) {
      area += part.areaMm2();
      first += part.areaMm2() * part.middleMm();
    }
    areaMm2 = area;
    centroidMm = first / area;
    double second = 0;
    for (Part part : parts) {
      double heightMm = part.toMm() - part.fromMm();
      double arm = part.middleMm() - centroidMm;
      second += part.areaMm2() * (heightMm * heightMm / 12 + arm * arm);
    }
    secondMm4 = second;
  }

  /**
   * A rail without a notch.
   *
   * @param rail the rail
   */
  public static NotchedSection whole(FrameRail rail) {
    List<Part> parts = railAbove(rail, 0);
    ChannelSection channel = rail.channel();
    double twist = openTwist(parts);
    if (rail.boxed()) {
      double wallMm = Math.min(channel.webMm(), rail.boxingPlateMm());
      twist =
          2
              * (channel.depthMm() - channel.flangeMm())
              * (rail.widthMm() - (channel.webMm() + rail.boxingPlateMm()) / 2)
              * Math.min(wallMm, channel.flangeMm());
    }
    return new NotchedSection(parts, twist);
  }

  /**
   * A rail at a station of its notch.
   *
   * @param rail the rail that was cut
   * @param notch the notch with its plates, of the rail's depth
   * @param alongMm distance from the middle of the notch, mm, either way
   */
  public static NotchedSection at(FrameRail rail, PlatedNotch notch, double alongMm) {
    double cutMm = notch.cutAtMm(alongMm);
    List<Part> parts = railAbove(rail, cutMm);
    double plateTopMm = notch.sidePlateTopAtMm(alongMm);
    if (notch.sidePlateMm() > 0 && plateTopMm > cutMm) {
      parts.add(new Part(notch.sidePlateMm(), cutMm, plateTopMm));
      parts.add(new Part(notch.sidePlateMm(), cutMm, plateTopMm));
    }
    double cosine = notch.cosineAt(alongMm);
    double stripMm = notch.stripMm() * cosine;
    boolean lined = cutMm > 0 && notch.stripMm() > 0;
    if (lined && stripMm * notch.stripWidthMm() * cosine * cosine > LEAST_MM2) {
      parts.add(new Part(notch.stripWidthMm() * cosine * cosine, cutMm - stripMm, cutMm));
    }
    addTopStrip(parts, notch, alongMm);
    double twist = openTwist(parts);
    if (rail.boxed() && (lined || cutMm == 0)) {
      twist = Math.max(twist, closedTwist(rail, notch, cutMm));
    }
    if (lined) {
      twist = Math.max(twist, raisedTwist(rail, notch, alongMm));
    }
    return new NotchedSection(parts, twist);
  }

  /** Its area counts as that of the strip in the cut does. */
  private static void addTopStrip(List<Part> parts, PlatedNotch notch, double alongMm) {
    double lowerMm = notch.topStripAtMm(alongMm);
    if (Double.isNaN(lowerMm)) {
      return;
    }
    double upperMm = notch.sidePlateTopAtMm(alongMm);
    double cosine = notch.sidePlateMm() / (upperMm - lowerMm);
    double widthMm = notch.stripWidthMm() * cosine * cosine * cosine * cosine;
    if (widthMm * (upperMm - lowerMm) > LEAST_MM2) {
      parts.add(new Part(widthMm, lowerMm, upperMm));
    }
  }

  private static double closedTwist(FrameRail rail, PlatedNotch notch, double cutMm) {
    ChannelSection channel = rail.channel();
    double wallMm = Math.min(channel.webMm(), rail.boxingPlateMm());
    double floorMm = cutMm > 0 ? notch.stripMm() : channel.flangeMm();
    double lowMm = cutMm > 0 ? cutMm - notch.stripMm() / 2 : channel.flangeMm() / 2;
    double heightMm = channel.depthMm() - channel.flangeMm() / 2 - lowMm;
    double widthMm = rail.widthMm() - (channel.webMm() + rail.boxingPlateMm()) / 2;
    return 2 * heightMm * widthMm * Math.min(Math.min(wallMm, floorMm), channel.flangeMm());
  }

  /**
   * The box of strip, side plates and top strip round what is left of the rail; 0 where no top
   * strip closes it. The rail in it is left out: shear that flows in the outer walls alone balances
   * the twist (lower bound theorem of limit analysis).
   */
  private static double raisedTwist(FrameRail rail, PlatedNotch notch, double alongMm) {
    double lowerMm = notch.topStripAtMm(alongMm);
    if (Double.isNaN(lowerMm)) {
      return 0;
    }
    double topMm = (lowerMm + notch.sidePlateTopAtMm(alongMm)) / 2;
    double heightMm = topMm - (notch.cutAtMm(alongMm) - notch.stripMm() / 2);
    return 2 * heightMm * rail.widthMm() * Math.min(notch.sidePlateMm(), notch.stripMm());
  }

  private static List<Part> railAbove(FrameRail rail, double levelMm) {
    List<Part> parts = new ArrayList<>(8);
    for (PlateRectangle part : rail.partsAbove(levelMm)) {
      parts.add(new Part(part.widthMm(), part.bottomMm(), part.topMm()));
    }
    return parts;
  }

  /** Twisting moment that brings unit stress to an open section (mm³). */
  private static double openTwist(List<Part> parts) {
    double sum = 0;
    double thickestMm = 0;
    for (Part part : parts) {
      double heightMm = part.toMm() - part.fromMm();
      double thinMm = Math.min(part.widthMm(), heightMm);
      sum += Math.max(part.widthMm(), heightMm) * thinMm * thinMm * thinMm / 3;
      thickestMm = Math.max(thickestMm, thinMm);
    }
    return sum / thickestMm;
  }

  /** Area (mm²), the strip as it counts in bending. */
  public double areaMm2() {
    return areaMm2;
  }

  /** Smaller section modulus of top and bottom, bending upright (mm³). */
  public double bendingMm3() {
    double top = Double.NEGATIVE_INFINITY;
    double bottom = Double.POSITIVE_INFINITY;
    for (Part part : parts) {
      top = Math.max(top, part.toMm());
      bottom = Math.min(bottom, part.fromMm());
    }
    return secondMm4 / Math.max(top - centroidMm, centroidMm - bottom);
  }

  /** Upright force that brings unit shear stress to the worst level (mm²). */
  public double shearMm2() {
    double least = atLevel(centroidMm);
    for (Part part : parts) {
      least = Math.min(least, Math.min(atLevel(part.fromMm()), atLevel(part.toMm())));
    }
    return least;
  }

  /** I b/Q at a level, the thinner of just above and just below it; infinite at the edges. */
  private double atLevel(double levelMm) {
    double first = 0;
    double above = 0;
    double below = 0;
    for (Part part : parts) {
      double fromMm = Math.max(part.fromMm(), levelMm);
      if (fromMm < part.toMm()) {
        first +=
            part.widthMm() * (part.toMm() - fromMm) * ((part.toMm() + fromMm) / 2 - centroidMm);
      }
      above += part.fromMm() <= levelMm && part.toMm() > levelMm ? part.widthMm() : 0;
      below += part.fromMm() < levelMm && part.toMm() >= levelMm ? part.widthMm() : 0;
    }
    double thinnestMm = above > 0 && below > 0 ? Math.min(above, below) : 0;
    return thinnestMm > 0 && first > LEAST_MM2
        ? secondMm4 * thinnestMm / first
        : Double.POSITIVE_INFINITY;
  }

  /** Twisting moment that brings unit shear stress (mm³). */
  public double twistMm3() {
    return twist;
  }
}

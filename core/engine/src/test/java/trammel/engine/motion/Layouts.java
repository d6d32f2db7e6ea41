package trammel.engine.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import trammel.engine.geometry.Point3;

/** Invented layouts for the tests, in inches or mm. */
final class Layouts {

  static final double INCH = 25.4;
  static final double STIFFNESS = 10000;

  private final List<Link> links = new ArrayList<>();

  Layouts pair(String name, Point3 frameLeft, Point3 axleLeft) {
    links.add(link(name + "_left", LinkKind.LONGITUDINAL, frameLeft, axleLeft));
    links.add(
        link(name + "_right", LinkKind.LONGITUDINAL, frameLeft.mirrored(), axleLeft.mirrored()));
    return this;
  }

  Layouts bar(Point3 frame, Point3 axle) {
    links.add(link("lateral_bar", LinkKind.LATERAL, frame, axle));
    return this;
  }

  Linkage build(double trackMm, double radiusMm) {
    return new Linkage(trackMm, radiusMm, links);
  }

  static Link link(String name, LinkKind kind, Point3 frame, Point3 axle) {
    return new Link(name, kind, frame, axle, STIFFNESS);
  }

  static Point3 inch(double x, double y, double z) {
    return new Point3(x * INCH, y * INCH, z * INCH);
  }

  /** Two straight lower bars, two upper bars angled in plan: closes exactly. */
  static Linkage triangulated() {
    return new Layouts()
        .pair("lower", inch(22, 18, 10), inch(0.5, 18, 9))
        .pair("upper", inch(15, 15, 16), inch(-1, 5, 17.5))
        .build(59 * INCH, 13 * INCH);
  }

  /** Four bars nearly parallel and a lateral bar: binds in roll. */
  static Linkage fourBarsAndLateralBar() {
    return new Layouts()
        .pair("lower", inch(25, 20, 10.5), inch(0.5, 20.5, 9.5))
        .pair("upper", inch(18, 18, 15.5), inch(1, 18.5, 16.5))
        .bar(inch(-6, 17, 14.5), inch(-6, -17, 13))
        .build(60 * INCH, 13.25 * INCH);
  }

  /** A layout as a shop might build it, every pivot moved by up to an inch. */
  static Linkage ordinary(Random random) {
    Linkage pattern = random.nextBoolean() ? triangulated() : fourBarsAndLateralBar();
    List<Link> links = new ArrayList<>();
    for (Link link : pattern.links()) {
      links.add(
          new Link(
              link.name(),
              link.kind(),
              moved(link.frame(), random),
              moved(link.axle(), random),
              STIFFNESS * (0.3 + 2 * random.nextDouble())));
    }
    return new Linkage(pattern.trackMm(), pattern.tyreLoadedRadiusMm(), links);
  }

  private static Point3 moved(Point3 point, Random random) {
    return new Point3(
        point.xMm() + INCH * (2 * random.nextDouble() - 1),
        point.yMm() + INCH * (2 * random.nextDouble() - 1),
        point.zMm() + INCH * (2 * random.nextDouble() - 1));
  }

  /** Links between points anywhere within a metre: nothing anyone would build. */
  static Linkage wild(Random random) {
    List<Link> links = new ArrayList<>();
    int count = 4 + random.nextInt(4);
    for (int i = 0; i < count; i++) {
      links.add(
          new Link(
              "link " + i,
              LinkKind.LONGITUDINAL,
              anywhere(random),
              anywhere(random),
              Math.pow(10, 2 + 4 * random.nextDouble())));
    }
    return new Linkage(1500, 330, links);
  }

  private static Point3 anywhere(Random random) {
    return new Point3(
        2000 * random.nextDouble() - 1000,
        2000 * random.nextDouble() - 1000,
        1000 * random.nextDouble());
  }

  /** The same layout in another size. */
  static Linkage scaled(Linkage linkage, double factor) {
    List<Link> links = new ArrayList<>();
    for (Link link : linkage.links()) {
      links.add(
          new Link(
              link.name(),
              link.kind(),
              scaled(link.frame(), factor),
              scaled(link.axle(), factor),
              link.stiffnessNPerMm()));
    }
    return new Linkage(linkage.trackMm() * factor, linkage.tyreLoadedRadiusMm() * factor, links);
  }

  private static Point3 scaled(Point3 point, double factor) {
    return new Point3(point.xMm() * factor, point.yMm() * factor, point.zMm() * factor);
  }

  /** The same layout with front and rear, left and right changed over. */
  static Linkage halfTurned(Linkage linkage) {
    List<Link> links = new ArrayList<>();
    for (Link link : linkage.links()) {
      links.add(
          new Link(
              link.name(),
              link.kind(),
              halfTurned(link.frame()),
              halfTurned(link.axle()),
              link.stiffnessNPerMm()));
    }
    return new Linkage(linkage.trackMm(), linkage.tyreLoadedRadiusMm(), links);
  }

  private static Point3 halfTurned(Point3 point) {
    return new Point3(-point.xMm(), -point.yMm(), point.zMm());
  }

  /** Energy of the links, half stiffness times stretch squared, summed (Nmm). */
  static double energyNmm(Linkage linkage, AxlePose pose) {
    double energy = 0;
    for (LinkReading link : LinkReading.of(linkage, pose)) {
      energy += 0.5 * link.bindForceN() * link.stretchMm();
    }
    return energy;
  }
}

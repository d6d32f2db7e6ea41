package trammel.planning.extension.kit;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.AxleMotion;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.Commission;
import trammel.planning.extension.ExtensionList;
import trammel.planning.extension.LimitedCheck;
import trammel.planning.extension.Site;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.UnitSystem;

/**
 * What every axle linkage must keep to. In a test of your plugin:
 *
 * <pre>{@code
 * new LinkageContract(new MyLinkage(), catalog, SampleVehicle.pickup()).verify();
 * }</pre>
 *
 * <p>The vehicle must be one on which the linkage works with its options left at their defaults.
 */
public final class LinkageContract {
  private static final double SAME_MM = 1e-6;
  private static final String LEFT = "-left";
  private static final String RIGHT = "-right";

  private final AxleLinkage linkage;
  private final Catalog catalog;
  private final Chassis chassis;

  /**
   * @param linkage the plugin's extension
   * @param catalog a catalog with everything that it plans with
   * @param chassis a vehicle on which it works
   */
  public LinkageContract(AxleLinkage linkage, Catalog catalog, Chassis chassis) {
    this.linkage = linkage;
    this.catalog = catalog;
    this.chassis = chassis;
  }

  /**
   * Checks the whole contract.
   *
   * @throws AssertionError with a plain sentence if something is not kept
   */
  public void verify() {
    OptionTrials.verifyNames(linkage.id(), linkage.title(), linkage.summary());
    JarList.verify(ExtensionList.Kind.LINKAGE, linkage.id(), linkage);
    new OptionTrials(linkage.id(), linkage.options(catalog)).verifyDeclarations();
    verifyChecks();
    AxleGuide guide = linkage.propose(site(chassis, FieldValues.none()));
    verifyBars(guide.bars());
    verifyHoldsTheAxle(guide);
    verifySameAgain(guide);
    verifyPlan(guide);
    verifyOnlyRefusals();
  }

  private Site site(Chassis vehicle, FieldValues options) {
    return new Site(vehicle, options, catalog, UnitSystem.US);
  }

  private static Layout layout(Chassis vehicle, AxleGuide guide) {
    return new Layout(vehicle, guide, SampleVehicle.springs(vehicle), List.of());
  }

  private WorkPlan plan(Chassis vehicle, AxleGuide guide, FieldValues options) {
    return linkage.plan(new Commission(layout(vehicle, guide), site(vehicle, options)));
  }

  private void verifyChecks() {
    Set<String> ids = new HashSet<>(catalog.limits().keySet());
    for (LimitedCheck limited : linkage.checks()) {
      Promise.kept(
          ids.add(limited.check().id()),
          "The check "
              + limited.check().id()
              + " of "
              + linkage.id()
              + " has the name of another; each needs its own.");
    }
  }

  private void verifyBars(List<Bar> bars) {
    Promise.kept(
        bars.size() >= 4, linkage.id() + " proposes " + bars.size() + " bars; four hold an axle.");
    Set<String> names = new HashSet<>();
    for (Bar bar : bars) {
      Promise.kept(
          names.add(bar.name()),
          linkage.id() + " has two bars called " + bar.name() + "; each needs its own name.");
    }
    for (Bar bar : bars) {
      if (bar.name().endsWith(LEFT)) {
        verifyMirrored(bar, bars);
      } else {
        Promise.kept(
            !bar.name().endsWith(RIGHT) || names.contains(swapped(bar.name(), RIGHT, LEFT)),
            bar.name() + " has no counterpart on the left.");
      }
    }
  }

  private static String swapped(String name, String from, String to) {
    return name.substring(0, name.length() - from.length()) + to;
  }

  private static void verifyMirrored(Bar left, List<Bar> bars) {
    Promise.kept(left.onLeft(), left.name() + " lies on the right of the vehicle.");
    String wanted = swapped(left.name(), LEFT, RIGHT);
    for (Bar bar : bars) {
      if (bar.name().equals(wanted)) {
        Promise.kept(
            same(left.frame().mirrored(), bar.frame()) && same(left.axle().mirrored(), bar.axle()),
            left.name() + " and " + wanted + " are not mirror images on a symmetrical vehicle.");
        Promise.kept(
            left.tube().equals(bar.tube()) && left.duties().equals(bar.duties()),
            left.name() + " and " + wanted + " are not made alike.");
        return;
      }
    }
    throw new AssertionError(left.name() + " has no counterpart " + wanted + ".");
  }

  private static boolean same(Point3 one, Point3 other) {
    return one.distanceMm(other) < SAME_MM;
  }

  private void verifyHoldsTheAxle(AxleGuide guide) {
    AxleMotion motion = guide.motion(chassis);
    double[] heavesMm = {chassis.travel().bumpMm(), -chassis.travel().droopMm()};
    for (double heaveMm : heavesMm) {
      Promise.kept(
          motion.solve(heaveMm, 0).found().isPresent(),
          "The bars that "
              + linkage.id()
              + " proposes do not let the axle move "
              + heaveMm
              + " mm from ride.");
    }
  }

  private void verifySameAgain(AxleGuide guide) {
    FieldValues defaults = FieldValues.none();
    Promise.kept(
        guide.equals(linkage.propose(site(chassis, defaults)))
            && plan(chassis, guide, defaults).equals(plan(chassis, guide, defaults)),
        linkage.id() + " gives another answer when asked again; it must hold no state.");
  }

  private void verifyPlan(AxleGuide guide) {
    FieldValues defaults = FieldValues.none();
    PlanPromises promises = new PlanPromises(linkage.id(), catalog);
    WorkPlan plan = plan(chassis, guide, defaults);
    verifyKept(plan, guide);
    Promise.kept(
        plan.tubes().size() >= guide.bars().size(),
        "The plan of " + linkage.id() + " has fewer tubes than bars.");
    Chassis wider = SampleVehicle.withRailsMoved(chassis, 25.4, 0);
    AxleGuide widerGuide = linkage.propose(site(wider, defaults));
    promises.verifyFollows(
        plan, plan(wider, widerGuide, defaults), "the rails are an inch wider apart");
    Chassis higher = SampleVehicle.withRailsMoved(chassis, 0, 12.7);
    promises.verifyFollows(
        plan, plan(higher, guide, defaults), "the rails are half an inch higher");
  }

  private void verifyKept(WorkPlan plan, AxleGuide guide) {
    new PlanPromises(linkage.id(), catalog).verify(plan);
    new MountPromises(linkage.id(), plan).verifyBars(guide.bars());
  }

  private void verifyOnlyRefusals() {
    List<FieldValues> trials = new OptionTrials(linkage.id(), linkage.options(catalog)).extremes();
    for (FieldValues trial : trials) {
      tryOut(chassis, trial);
    }
    for (Chassis vehicle : SampleChassis.about(chassis)) {
      tryOut(vehicle, FieldValues.none());
    }
  }

  private void tryOut(Chassis vehicle, FieldValues options) {
    try {
      AxleGuide guide = linkage.propose(site(vehicle, options));
      verifyKept(plan(vehicle, guide, options), guide);
    } catch (UnworkableLayoutException refusal) {
      Promise.kept(
          refusal.getMessage() != null && refusal.getMessage().length() >= 40,
          linkage.id() + " refuses with '" + refusal.getMessage() + "'; say what to change.");
    } catch (RuntimeException fault) {
      throw new AssertionError(
          linkage.id()
              + " fails on a vehicle or option instead of refusing it with an"
              + " UnworkableLayoutException: "
              + fault,
          fault);
    }
  }
}

package trammel.planning.extension.kit;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.Commission;
import trammel.planning.extension.ExtensionList;
import trammel.planning.extension.LimitedCheck;
import trammel.planning.extension.Site;
import trammel.planning.extension.SpringMount;
import trammel.planning.extension.SpringSet;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.UnitSystem;

/**
 * What every spring mount must keep to. In a test of your plugin:
 *
 * <pre>{@code
 * new SpringContract(new MySprings(), catalog, SampleVehicle.pickup()).verify();
 * }</pre>
 *
 * <p>The vehicle must be one on which the springs work with their options left at their defaults;
 * stand-in bars are put under it.
 */
public final class SpringContract {
  private static final double SAME_MM = 1e-6;
  private static final String LEFT = "-left";
  private static final String RIGHT = "-right";

  private final SpringMount mount;
  private final Catalog catalog;
  private final Chassis chassis;

  /**
   * @param mount the plugin's extension
   * @param catalog a catalog with everything that it plans with
   * @param chassis a vehicle on which it works
   */
  public SpringContract(SpringMount mount, Catalog catalog, Chassis chassis) {
    this.mount = mount;
    this.catalog = catalog;
    this.chassis = chassis;
  }

  /**
   * Checks the whole contract.
   *
   * @throws AssertionError with a plain sentence if something is not kept
   */
  public void verify() {
    OptionTrials.verifyNames(mount.id(), mount.title(), mount.summary());
    JarList.verify(ExtensionList.Kind.SPRING, mount.id(), mount);
    new OptionTrials(mount.id(), mount.options(catalog)).verifyDeclarations();
    verifyChecks();
    SpringSet set = propose(chassis, FieldValues.none());
    verifyNames(set);
    verifySymmetry(set);
    verifySameAgain(set);
    verifyPlan(set);
    verifyOnlyRefusals();
  }

  private Site site(Chassis vehicle, FieldValues options) {
    return new Site(vehicle, options, catalog, UnitSystem.US);
  }

  private SpringSet propose(Chassis vehicle, FieldValues options) {
    return mount.propose(site(vehicle, options), AxleGuide.of(SampleVehicle.bars(vehicle)));
  }

  private WorkPlan plan(Chassis vehicle, SpringSet set, FieldValues options) {
    Layout layout = new Layout(vehicle, SampleVehicle.bars(vehicle), set.springs(), set.shocks());
    return mount.plan(new Commission(layout, site(vehicle, options)));
  }

  private void verifyChecks() {
    Set<String> ids = new HashSet<>(catalog.limits().keySet());
    for (LimitedCheck limited : mount.checks()) {
      Promise.kept(
          ids.add(limited.check().id()),
          "The check "
              + limited.check().id()
              + " of "
              + mount.id()
              + " has the name of another; each needs its own.");
    }
  }

  private void verifyNames(SpringSet set) {
    Promise.kept(!set.springs().isEmpty(), mount.id() + " proposes no spring.");
    Set<String> names = new HashSet<>();
    for (Bar bar : SampleVehicle.bars(chassis)) {
      names.add(bar.name());
    }
    for (SpringUnit spring : set.springs()) {
      Promise.kept(names.add(spring.name()), "Two parts are called " + spring.name() + ".");
    }
    for (ShockUnit shock : set.shocks()) {
      Promise.kept(names.add(shock.name()), "Two parts are called " + shock.name() + ".");
    }
  }

  private void verifySymmetry(SpringSet set) {
    for (SpringUnit spring : set.springs()) {
      if (spring.name().endsWith(LEFT)) {
        SpringUnit other = null;
        for (SpringUnit candidate : set.springs()) {
          other = candidate.name().equals(counterpart(spring.name())) ? candidate : other;
        }
        Promise.kept(other != null, spring.name() + " has no counterpart on the right.");
        verifyMirrored(spring.name(), spring.frame(), other.frame());
        verifyMirrored(spring.name(), spring.axle(), other.axle());
      }
    }
    for (ShockUnit shock : set.shocks()) {
      if (shock.name().endsWith(LEFT)) {
        ShockUnit other = null;
        for (ShockUnit candidate : set.shocks()) {
          other = candidate.name().equals(counterpart(shock.name())) ? candidate : other;
        }
        Promise.kept(other != null, shock.name() + " has no counterpart on the right.");
        verifyMirrored(shock.name(), shock.frame(), other.frame());
        verifyMirrored(shock.name(), shock.axle(), other.axle());
      }
    }
  }

  private static String counterpart(String left) {
    return left.substring(0, left.length() - LEFT.length()) + RIGHT;
  }

  private static void verifyMirrored(String name, Point3 left, Point3 right) {
    Promise.kept(left.yMm() > 0, name + " lies on the right of the vehicle.");
    Promise.kept(
        left.mirrored().distanceMm(right) < SAME_MM,
        name + " and its counterpart are not mirror images on a symmetrical vehicle.");
  }

  private void verifySameAgain(SpringSet set) {
    FieldValues defaults = FieldValues.none();
    Promise.kept(
        set.equals(propose(chassis, defaults))
            && plan(chassis, set, defaults).equals(plan(chassis, set, defaults)),
        mount.id() + " gives another answer when asked again; it must hold no state.");
  }

  private void verifyPlan(SpringSet set) {
    FieldValues defaults = FieldValues.none();
    PlanPromises promises = new PlanPromises(mount.id(), catalog);
    WorkPlan plan = plan(chassis, set, defaults);
    verifyKept(plan, set);
    Chassis wider = SampleVehicle.withRailsMoved(chassis, 25.4, 0);
    promises.verifyFollows(
        plan, plan(wider, propose(wider, defaults), defaults), "the rails are an inch wider apart");
  }

  private void verifyKept(WorkPlan plan, SpringSet set) {
    new PlanPromises(mount.id(), catalog).verify(plan);
    new MountPromises(mount.id(), plan).verifyShocks(set.shocks());
  }

  private void verifyOnlyRefusals() {
    List<FieldValues> trials = new OptionTrials(mount.id(), mount.options(catalog)).extremes();
    for (FieldValues trial : trials) {
      tryOut(chassis, trial);
    }
    for (Chassis vehicle : SampleChassis.about(chassis)) {
      tryOut(vehicle, FieldValues.none());
    }
  }

  private void tryOut(Chassis vehicle, FieldValues options) {
    try {
      SpringSet set = propose(vehicle, options);
      verifyKept(plan(vehicle, set, options), set);
    } catch (UnworkableLayoutException refusal) {
      Promise.kept(
          refusal.getMessage() != null && refusal.getMessage().length() >= 40,
          mount.id() + " refuses with '" + refusal.getMessage() + "'; say what to change.");
    } catch (RuntimeException fault) {
      throw new AssertionError(
          mount.id()
              + " fails on a vehicle or option instead of refusing it with an"
              + " UnworkableLayoutException: "
              + fault,
          fault);
    }
  }
}

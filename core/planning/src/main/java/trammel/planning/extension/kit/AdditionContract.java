package trammel.planning.extension.kit;

import java.util.HashSet;
import java.util.Set;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.Addition;
import trammel.planning.extension.Commission;
import trammel.planning.extension.ExtensionList;
import trammel.planning.extension.LimitedCheck;
import trammel.planning.extension.Site;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.UnitSystem;

/**
 * What every addition must keep to. In a test of your plugin:
 *
 * <pre>{@code
 * new AdditionContract(new MyAddition(), catalog, SampleVehicle.pickup()).verify();
 * }</pre>
 *
 * <p>The vehicle must be one on which it works with its options left at their defaults; stand-in
 * bars, springs and shocks are put under it.
 */
public final class AdditionContract {
  private final Addition addition;
  private final Catalog catalog;
  private final Chassis chassis;

  /**
   * @param addition the plugin's extension
   * @param catalog a catalog with everything that it plans with
   * @param chassis a vehicle on which it works
   */
  public AdditionContract(Addition addition, Catalog catalog, Chassis chassis) {
    this.addition = addition;
    this.catalog = catalog;
    this.chassis = chassis;
  }

  /**
   * Checks the whole contract.
   *
   * @throws AssertionError with a plain sentence if something is not kept
   */
  public void verify() {
    OptionTrials.verifyNames(addition.id(), addition.title(), addition.summary());
    JarList.verify(ExtensionList.Kind.ADDITION, addition.id(), addition);
    new OptionTrials(addition.id(), addition.options(catalog)).verifyDeclarations();
    verifyChecks();
    WorkPlan plan = plan(chassis, FieldValues.none());
    Promise.kept(
        plan.equals(plan(chassis, FieldValues.none())),
        addition.id() + " gives another answer when asked again; it must hold no state.");
    PlanPromises promises = new PlanPromises(addition.id(), catalog);
    promises.verify(plan);
    Chassis wider = SampleVehicle.withRailsMoved(chassis, 25.4, 0);
    promises.verifyFollows(
        plan, plan(wider, FieldValues.none()), "the rails are an inch wider apart");
    verifyOnlyRefusals();
  }

  private Site site(Chassis vehicle, FieldValues options) {
    return new Site(vehicle, options, catalog, UnitSystem.US);
  }

  private WorkPlan plan(Chassis vehicle, FieldValues options) {
    Layout layout =
        new Layout(
            vehicle,
            SampleVehicle.bars(vehicle),
            SampleVehicle.springs(vehicle),
            SampleVehicle.shocks(vehicle));
    Site site = site(vehicle, options);
    return addition.plan(new Commission(addition.onto(layout, site), site));
  }

  private void verifyChecks() {
    Set<String> ids = new HashSet<>(catalog.limits().keySet());
    for (LimitedCheck limited : addition.checks(site(chassis, FieldValues.none()))) {
      Promise.kept(
          ids.add(limited.check().id()),
          "The check "
              + limited.check().id()
              + " of "
              + addition.id()
              + " has the name of another; each needs its own.");
    }
  }

  private void verifyOnlyRefusals() {
    for (FieldValues trial :
        new OptionTrials(addition.id(), addition.options(catalog)).extremes()) {
      tryOut(chassis, trial);
    }
    for (Chassis vehicle : SampleChassis.about(chassis)) {
      tryOut(vehicle, FieldValues.none());
    }
  }

  private void tryOut(Chassis vehicle, FieldValues options) {
    try {
      new PlanPromises(addition.id(), catalog).verify(plan(vehicle, options));
    } catch (UnworkableLayoutException refusal) {
      Promise.kept(
          refusal.getMessage() != null && refusal.getMessage().length() >= 40,
          addition.id() + " refuses with '" + refusal.getMessage() + "'; say what to change.");
    } catch (RuntimeException fault) {
      throw new AssertionError(
          addition.id()
              + " fails on a vehicle or option instead of refusing it with an"
              + " UnworkableLayoutException: "
              + fault,
          fault);
    }
  }
}

package trammel.plugins.fourlinklateral;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import trammel.brackets.rail.RailClosings;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.TubeNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.extension.Commission;
import trammel.planning.extension.Site;
import trammel.planning.extension.kit.SampleVehicle;
import trammel.planning.options.BarOptions;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.welding.WeldSeam;

/** A vehicle and options to try the linkage with, and look-ups in its plan. */
record Trial(Chassis chassis, FieldValues options) {
  static final double INCH_MM = 25.4;
  static final Catalog CATALOG = CatalogReader.read(Path.of("..", "..", "catalogs", "standard"));
  static final FourLinkLateral LINKAGE = new FourLinkLateral();

  static Trial mounted(String mounting) {
    return new Trial(
        SampleVehicle.pickup(), FieldValues.none().with(BarOptions.mounting("bars"), mounting));
  }

  Trial with(String key, double inches) {
    for (Field<?> field : LINKAGE.options(CATALOG)) {
      if (field.key().equals(key)) {
        @SuppressWarnings("unchecked")
        Field<Double> length = (Field<Double>) field;
        return new Trial(chassis, options.with(length, inches * INCH_MM));
      }
    }
    throw new IllegalArgumentException("no option " + key);
  }

  Trial withHoles(int holes) {
    return new Trial(chassis, options.with(BarOptions.FRAME_HOLES, holes));
  }

  Trial on(Chassis other) {
    return new Trial(other, options);
  }

  Site site() {
    return new Site(chassis, options, CATALOG, UnitSystem.US);
  }

  List<Bar> bars() {
    return LINKAGE.propose(site()).bars();
  }

  Bar bar(String name) {
    return layout(bars()).bar(name).orElseThrow();
  }

  Layout layout(List<Bar> bars) {
    return new Layout(chassis, bars, SampleVehicle.springs(chassis), List.of());
  }

  WorkPlan plan() {
    return plan(bars());
  }

  WorkPlan plan(List<Bar> bars) {
    WorkPlan plan = LINKAGE.plan(new Commission(layout(bars), site()));
    return RailClosings.closed(plan, chassis.rails(), Optional.empty());
  }

  static PlateNeed plate(WorkPlan plan, String name) {
    return plan.plates().stream()
        .filter(need -> need.plate().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  static TubeNeed tube(WorkPlan plan, String name) {
    return plan.tubes().stream().filter(need -> need.name().equals(name)).findFirst().orElseThrow();
  }

  static WeldSeam weld(WorkPlan plan, String name) {
    return plan.welds().stream().filter(seam -> seam.name().equals(name)).findFirst().orElseThrow();
  }

  static double quantity(WorkPlan plan, String operationKey) {
    return plan.operations().stream()
        .filter(need -> need.operationKey().equals(operationKey))
        .mapToDouble(OperationNeed::quantity)
        .sum();
  }

  static double widthMm(PlateNeed need) {
    return need.plate().outline().bounds().widthMm();
  }

  static double heightMm(PlateNeed need) {
    return need.plate().outline().bounds().heightMm();
  }
}

package trammel.planning.extension.kit;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import trammel.brackets.work.PartNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.Bar;
import trammel.engine.layout.ShockUnit;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.trade.welding.FilletWeld;
import trammel.trade.welding.WeldPlace;
import trammel.trade.welding.WeldPosition;
import trammel.trade.welding.WeldSeam;

/** Each thing that holds an end of a bar or shock, left out once, is missed by name. */
class MountPromisesTest {
  private static final Catalog CATALOG =
      CatalogReader.read(Path.of("..", "..", "catalogs", "standard"));
  private static final List<Bar> BARS = SampleVehicle.bars(SampleVehicle.pickup());
  private static final List<ShockUnit> SHOCKS = SampleVehicle.shocks(SampleVehicle.pickup());
  private static final String END = "upper-left AXLE";

  private static WorkPlan bars() {
    return StandInMounts.ofBars(BARS, CATALOG);
  }

  private static void verify(WorkPlan plan) {
    new MountPromises("stand-in", plan).verifyBars(BARS);
  }

  private static void assertMissed(WorkPlan plan, String words) {
    String message = assertThrows(AssertionError.class, () -> verify(plan)).getMessage();
    assertTrue(message.contains("axle end of upper-left") && message.contains(words), message);
  }

  private static <T> List<T> without(List<T> all, Predicate<T> left) {
    List<T> rest = all.stream().filter(left.negate()).toList();
    assertTrue(rest.size() < all.size());
    return rest;
  }

  @Test
  void aPlanWithEveryEndBoltedWeldedAndFittedPasses() {
    assertDoesNotThrow(() -> verify(bars()));
  }

  @Test
  void anEndWithoutItsBoltIsNamed() {
    WorkPlan all = bars();
    assertMissed(
        new WorkPlan(
            all.parts(),
            without(all.bolts(), bolt -> bolt.where().equals(END)),
            all.plates(),
            all.tubes(),
            all.welds(),
            all.operations(),
            all.feet(),
            all.closings(),
            all.members(),
            all.railMounts(),
            all.holds()),
        "no bolt or pin");
  }

  @Test
  void anEndWithoutItsBracketIsNamed() {
    WorkPlan all = bars();
    assertMissed(
        new WorkPlan(
            all.parts(),
            all.bolts(),
            without(all.plates(), plate -> plate.plate().name().startsWith(END)),
            all.tubes(),
            all.welds(),
            all.operations(),
            all.feet(),
            all.closings(),
            all.members(),
            all.railMounts(),
            all.holds()),
        "no bracket");
  }

  @Test
  void anEndWhoseBracketIsNotWeldedOnIsNamed() {
    WorkPlan all = bars();
    assertMissed(
        new WorkPlan(
            all.parts(),
            all.bolts(),
            all.plates(),
            all.tubes(),
            without(all.welds(), weld -> weld.name().startsWith(END)),
            all.operations(),
            all.feet(),
            all.closings(),
            all.members(),
            all.railMounts(),
            all.holds()),
        "no seam");
  }

  @Test
  void anEndWithoutItsFootIsNamed() {
    WorkPlan all = bars();
    assertMissed(
        new WorkPlan(
            all.parts(),
            all.bolts(),
            all.plates(),
            all.tubes(),
            all.welds(),
            all.operations(),
            without(all.feet(), foot -> foot.name().startsWith(END)),
            all.closings(),
            all.members(),
            all.railMounts(),
            all.holds()),
        "no foot");
  }

  @Test
  void anEndThatNobodyFitsIsNamed() {
    WorkPlan all = bars();
    String message =
        assertThrows(
                AssertionError.class,
                () ->
                    verify(
                        new WorkPlan(
                            all.parts(),
                            all.bolts(),
                            all.plates(),
                            all.tubes(),
                            all.welds(),
                            without(all.operations(), one -> one.why().mentions("upper-left")),
                            all.feet(),
                            all.closings(),
                            all.members(),
                            all.railMounts(),
                            all.holds())))
            .getMessage();
    assertTrue(message.contains("end of upper-left has no operation"), message);
  }

  @Test
  void aShockWithoutABoltIsNamed() {
    WorkPlan all = StandInMounts.ofShocks(SHOCKS, CATALOG);
    assertDoesNotThrow(() -> new MountPromises("stand-in", all).verifyShocks(SHOCKS));
    WorkPlan less =
        new WorkPlan(
            all.parts(),
            without(all.bolts(), bolt -> bolt.where().equals("shock-right FRAME")),
            all.plates(),
            all.tubes(),
            all.welds(),
            all.operations(),
            all.feet(),
            all.closings(),
            all.members(),
            all.railMounts(),
            all.holds());
    String message =
        assertThrows(
                AssertionError.class,
                () -> new MountPromises("stand-in", less).verifyShocks(SHOCKS))
            .getMessage();
    assertTrue(message.contains("frame end of shock-right has no bolt"), message);
  }

  /** A bump stop is a thing that stands somewhere; a kit of lines is laid as it fits. */
  @Test
  void aPartWithoutItsPlaceIsNamed() {
    PlanPromises promises = new PlanPromises("stand-in", CATALOG);
    WorkPlan kit =
        bars()
            .plus(
                new WorkPlan.Builder()
                    .add(
                        PartNeed.withoutPlace("air-line-kit", 1, Phrase.of("laid along the frame")))
                    .build());
    assertDoesNotThrow(() -> promises.verify(kit));
    WorkPlan shock =
        bars()
            .plus(
                new WorkPlan.Builder()
                    .add(PartNeed.withoutPlace("shock-8", 2, Phrase.of("one on each side")))
                    .build());
    String message = assertThrows(AssertionError.class, () -> promises.verify(shock)).getMessage();
    assertTrue(message.contains("where 'shock-8' stands"), message);
  }

  @Test
  void aWeldWithoutItsPathIsNamed() {
    WorkPlan weld =
        bars()
            .plus(
                new WorkPlan.Builder()
                    .add(
                        WeldSeam.alone(
                            "tab to nothing",
                            FilletWeld.ofLeg(5),
                            50,
                            1,
                            WeldPosition.FLAT,
                            WeldPlace.BENCH,
                            Phrase.of("nobody knows where")))
                    .build());
    String message =
        assertThrows(AssertionError.class, () -> new PlanPromises("stand-in", CATALOG).verify(weld))
            .getMessage();
    assertTrue(message.contains("where the weld 'tab to nothing' runs"), message);
  }
}

package trammel.planning.extension.kit;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.assembly.Assembly;
import trammel.assembly.CopedTube;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PartNeed;
import trammel.brackets.work.TubeNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.Bar;
import trammel.engine.layout.End;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.Commission;
import trammel.planning.extension.Site;
import trammel.reading.fields.Field;
import trammel.trade.steel.RoundTube;

/**
 * The kit passes a linkage that keeps the contract and names what is broken in one that does not.
 */
class LinkageContractTest {
  private static final Catalog CATALOG =
      CatalogReader.read(Path.of("..", "..", "catalogs", "standard"));

  /** A linkage that keeps the contract; each test breaks one thing. */
  private static class Sound implements AxleLinkage {
    @Override
    public String id() {
      return "stand-in";
    }

    @Override
    public String title() {
      return "Stand-in linkage";
    }

    @Override
    public String summary() {
      return "Only there to try the test kit with.";
    }

    @Override
    public List<Field<?>> options(Catalog catalog) {
      return List.of(Field.lengthMm("reach", "how far it reaches", 10, 20).withDefault(15.0));
    }

    @Override
    public AxleGuide propose(Site site) {
      return AxleGuide.of(SampleVehicle.bars(site.chassis()));
    }

    @Override
    public WorkPlan plan(Commission commission) {
      WorkPlan.Builder plan = new WorkPlan.Builder();
      String tube = CATALOG.bars().keySet().iterator().next();
      double highMm = commission.layout().chassis().rails().undersideAtAxleMm();
      for (Bar bar : commission.layout().bars()) {
        double lengthMm = bar.lengthMm() + highMm / 100 + bar.axle().yMm() / 1000;
        plan.add(tube(bar.name(), tube, lengthMm, 1));
      }
      plan.add(new OperationNeed("make-bar", 5, "5 bars", Phrase.of("each bar of the linkage")));
      return plan.build().plus(StandInMounts.ofBars(commission.layout().bars(), CATALOG));
    }
  }

  private static TubeNeed tube(String name, String key, double lengthMm, int count) {
    return new TubeNeed(
        name,
        key,
        lengthMm,
        CopedTube.square(new RoundTube(38.1, 3.048), lengthMm),
        Collections.nCopies(count, new Held(Assembly.FRAME, Place.RIDE)),
        Phrase.of("square"),
        Phrase.of("joint to joint"));
  }

  private static void verify(AxleLinkage linkage) {
    new LinkageContract(linkage, CATALOG, SampleVehicle.pickup()).verify();
  }

  private static void assertNames(AxleLinkage broken, String what) {
    String message = assertThrows(AssertionError.class, () -> verify(broken)).getMessage();
    assertTrue(message.contains(what), message);
  }

  @Test
  void soundLinkagePasses() {
    assertDoesNotThrow(() -> verify(new Sound()));
  }

  @Test
  void idWithCapitalsIsNamed() {
    assertNames(
        new Sound() {
          @Override
          public String id() {
            return "Stand In";
          }
        },
        "lower-case");
  }

  @Test
  void requiredOptionIsNamed() {
    assertNames(
        new Sound() {
          @Override
          public List<Field<?>> options(Catalog catalog) {
            return List.of(Field.lengthMm("reach", "how far it reaches", 10, 20));
          }
        },
        "reach");
  }

  @Test
  void lopsidedProposalIsNamed() {
    assertNames(
        new Sound() {
          @Override
          public AxleGuide propose(Site site) {
            List<Bar> bars = new ArrayList<>(super.propose(site).bars());
            Point3 axle = bars.get(0).axle();
            Point3 moved = new Point3(axle.xMm() + 1, axle.yMm(), axle.zMm());
            bars.set(0, bars.get(0).withPoint(End.AXLE, moved));
            return AxleGuide.of(bars);
          }
        },
        "mirror images");
  }

  @Test
  void unknownItemIsNamed() {
    assertNames(
        new Sound() {
          @Override
          public WorkPlan plan(Commission commission) {
            return super.plan(commission)
                .plus(
                    new WorkPlan.Builder()
                        .add(
                            PartNeed.withoutPlace(
                                "no-such-item", 1, Phrase.of("nobody asked for it")))
                        .build());
          }
        },
        "no-such-item");
  }

  @Test
  void planThatIgnoresTheRailsIsNamed() {
    List<Bar> bars = SampleVehicle.bars(SampleVehicle.pickup());
    WorkPlan mounts = StandInMounts.ofBars(bars, CATALOG);
    assertNames(
        new Sound() {
          @Override
          public WorkPlan plan(Commission commission) {
            WorkPlan.Builder plan = new WorkPlan.Builder();
            String tube = CATALOG.bars().keySet().iterator().next();
            plan.add(tube("bar", tube, 500, 5));
            for (int i = 0; i < 4; i++) {
              plan.add(tube("bar " + i, tube, 500, 5));
            }
            plan.add(
                new OperationNeed("make-bar", 5, "5 bars", Phrase.of("each bar of the linkage")));
            return plan.build().plus(mounts);
          }
        },
        "it must follow");
  }

  /** Every bar has its bracket, bolt and weld but one, whose operation is left out. */
  @Test
  void barWhoseBracketsNobodyFitsIsNamed() {
    assertNames(
        new Sound() {
          @Override
          public WorkPlan plan(Commission commission) {
            WorkPlan all = super.plan(commission);
            return new WorkPlan(
                all.parts(),
                all.bolts(),
                all.plates(),
                all.tubes(),
                all.welds(),
                all.operations().stream()
                    .filter(one -> !one.why().mentions("lower-right"))
                    .toList(),
                all.feet(),
                all.closings(),
                all.members(),
                all.railMounts(),
                all.holds());
          }
        },
        "frame end of lower-right has no operation");
  }

  @Test
  void faultInsteadOfARefusalIsNamed() {
    assertNames(
        new Sound() {
          @Override
          public AxleGuide propose(Site site) {
            if (site.chassis().rails().boxed()) {
              throw new IllegalStateException("unforeseen");
            }
            return super.propose(site);
          }
        },
        "unforeseen");
  }
}

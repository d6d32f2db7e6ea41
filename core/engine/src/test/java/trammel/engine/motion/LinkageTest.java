package trammel.engine.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.motion.Layouts.inch;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.engine.geometry.Point3;

class LinkageTest {

  @Test
  void aLinkWithBothPivotsInOnePlaceIsRefusedByName() {
    Point3 pivot = new Point3(25.4, -482.6, 425.45);
    assertRefused(
        () -> new Link("upper_right", LinkKind.LONGITUDINAL, pivot, pivot, 10000),
        "upper_right",
        "0.0 mm");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void aStiffnessThatIsNoPositiveNumberIsRefused(double stiffness) {
    assertRefused(
        () ->
            new Link(
                "lower_left",
                LinkKind.LONGITUDINAL,
                new Point3(500, 0, 0),
                new Point3(0, 0, 0),
                stiffness),
        "lower_left",
        "stiffness");
  }

  @Test
  void aPivotInAnotherTownIsRefused() {
    assertRefused(
        () -> Layouts.link("bar", LinkKind.LATERAL, new Point3(2e7, 0, 0), new Point3(0, 0, 0)),
        "bar",
        "unit");
  }

  @Test
  void threeLinksAreTooFew() {
    List<Link> three = Layouts.triangulated().links().subList(0, 3);
    assertRefused(() -> new Linkage(1500, 330, three), "3 links", "at least 4");
  }

  @Test
  void twoLinksOfOneNameAreRefused() {
    List<Link> links = new ArrayList<>(Layouts.triangulated().links());
    links.add(links.get(0));
    assertRefused(() -> new Linkage(1500, 330, links), "lower_left");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1500, Double.NaN, Double.POSITIVE_INFINITY})
  void aTrackThatIsNoLengthIsRefused(double trackMm) {
    assertRefused(
        () -> new Linkage(trackMm, 330, Layouts.triangulated().links()), "track", "above 0");
  }

  @Test
  void fourParallelBarsWithoutALateralBarLeaveTheAxleLooseSideways() {
    Layouts bars =
        new Layouts()
            .pair("lower", inch(22, 18, 10), inch(0, 18, 10))
            .pair("upper", inch(22, 18, 17), inch(0, 18, 17));
    assertRefused(() -> bars.build(1500, 330), "sideways", "lateral bar");
  }

  @Test
  void twoBarsAtOneHeightLeaveTheHousingFreeToWindUp() {
    Layouts bars =
        new Layouts()
            .pair("outer", inch(22, 18, 13), inch(0, 18, 13))
            .pair("inner", inch(22, 9, 13), inch(0, 9, 13))
            .bar(inch(0, 17, 13), inch(0, -17, 13));
    assertRefused(() -> bars.build(1500, 13 * 25.4), "winding up");
  }

  @Test
  void barsInOnePlaneWithALateralBarLeaveTheAxleFreeToYaw() {
    List<Link> links =
        List.of(
            Layouts.link("low", LinkKind.LONGITUDINAL, inch(22, 0, 8), inch(0, 0, 8)),
            Layouts.link("middle", LinkKind.LONGITUDINAL, inch(20, 0, 14), inch(0, 0, 13)),
            Layouts.link("high", LinkKind.LONGITUDINAL, inch(21, 0, 19), inch(0, 0, 18)),
            Layouts.link("bar", LinkKind.LATERAL, inch(0, 17, 13), inch(0, -17, 13)));
    assertRefused(() -> new Linkage(1500, 330, links), "plan view");
  }

  @Test
  void stiffnessesAMillionTimesApartAreRefused() {
    Linkage linkage = Layouts.fourBarsAndLateralBar();
    Link bar = linkage.link("lateral_bar");
    Link soft = new Link(bar.name(), bar.kind(), bar.frame(), bar.axle(), 1e-3);
    assertRefused(() -> linkage.withLink(soft), "lateral_bar", "million");
  }

  @Test
  void aLinkIsReplacedByItsName() {
    Linkage linkage = Layouts.triangulated();
    Link longer =
        Layouts.link("upper_left", LinkKind.LONGITUDINAL, inch(17, 15, 16), inch(-1, 5, 17.5));
    Linkage changed = linkage.withLink(longer);
    assertEquals(longer, changed.link("upper_left"));
    assertEquals(linkage.link("lower_left"), changed.link("lower_left"));
    assertEquals(4, changed.links().size());
  }

  @Test
  void anUnknownNameIsAnsweredWithTheKnownOnes() {
    assertRefused(() -> Layouts.triangulated().link("top_left"), "top_left", "upper_left");
  }

  @Test
  void onlyFourLinksCloseExactly() {
    assertTrue(Layouts.triangulated().closesExactly());
    assertFalse(Layouts.fourBarsAndLateralBar().closesExactly());
  }

  private static void assertRefused(Runnable action, String... words) {
    IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, action::run);
    for (String word : words) {
      assertTrue(refusal.getMessage().contains(word), refusal.getMessage());
    }
  }
}

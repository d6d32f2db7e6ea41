package trammel.planning.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.assembly.Assembly;
import trammel.assembly.CopedTube;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.brackets.material.PlateMaterial;
import trammel.brackets.work.BoltNeed;
import trammel.brackets.work.Bolting;
import trammel.brackets.work.PartNeed;
import trammel.brackets.work.TubeNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.rack.Rack;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.BadInputException;
import trammel.trade.steel.RoundTube;

/**
 * Orders over the standard catalog with a shop's terms over it. What is expected is worked by hand
 * from the numbers written here; the ways of selling are common practice, no source.
 */
class OrderingTest {
  private static final double INCH_MM = 25.4;
  private static final Path STANDARD = Path.of("..", "..", "catalogs", "standard");
  private static final String TUBE = "dom-1.50x0.120";

  @TempDir Path shop;

  private Catalog catalog(String sections) {
    try {
      Files.writeString(
          shop.resolve("shop.json"),
          "{\"format\": \"trammel-catalog/1\", \"units\": \"us\", \"currency\": \"USD\","
              + " \"prices\": \"made up for this test\", \"supplier\": \"any\", \"lead_days\": 2, "
              + sections
              + "}");
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    return CatalogReader.read(List.of(STANDARD, shop));
  }

  private static MaterialOrder order(Catalog catalog, Rack rack, WorkPlan... plans) {
    List<OrderedJob> jobs = new ArrayList<>();
    for (WorkPlan plan : plans) {
      jobs.add(new OrderedJob("J" + jobs.size(), plan, Optional.empty()));
    }
    return new Ordering(catalog, new QuantityPrinter(UnitSystem.US)).order(jobs, rack);
  }

  private static Rack none() {
    return Rack.EMPTY;
  }

  private static WorkPlan tubes(double lengthIn, int count) {
    return new WorkPlan.Builder().add(tube("bar", TUBE, lengthIn * INCH_MM, count)).build();
  }

  private static WorkPlan part(String key, double quantity) {
    return new WorkPlan.Builder()
        .add(PartNeed.withoutPlace(key, quantity, Phrase.of("test")))
        .build();
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

  private static final List<Bolting> THREE_BOLTS =
      Collections.nCopies(
          3, new Bolting(new Held(Assembly.FRAME, Place.RIDE), List.of("one", "other")));

  private static SupplierOrder only(MaterialOrder order) {
    assertEquals(1, order.suppliers().size());
    return order.suppliers().get(0);
  }

  /**
   * By hand, at the standard catalog's prices with 60.00 for sticks over 16 ft: three pieces of 70
   * in come out of one 20 ft stick for 78.00 + 60.00, or out of 12 ft and 6 ft for 55.00 + 33.00.
   */
  @Test
  void aLongStickIsNotBoughtForLessThanItsChargeSaves() {
    MaterialOrder order = order(CatalogReader.read(STANDARD), none(), sawn("hrew-1.50x0.120"));
    assertEquals(new BigDecimal("88.00"), goods(order));
    assertFalse(hasCharge(order, "over-length"));
  }

  /**
   * The charge is paid once: 2 in tube saves 291.50 + 175.50 - 411.50 = 55.50 from a long stick,
   * which is less than 60.00; with the 10.00 of the other section it is more.
   */
  @Test
  void twoSectionsTogetherMayBeWorthTheChargeForLength() {
    Catalog catalog = CatalogReader.read(STANDARD);
    assertEquals(new BigDecimal("467.00"), goods(order(catalog, none(), sawn("dom-2.00x0.250"))));
    MaterialOrder both =
        order(catalog, none(), sawn("dom-2.00x0.250").plus(sawn("hrew-1.50x0.120")));
    assertEquals(new BigDecimal("489.50"), goods(both));
    assertTrue(hasCharge(both, "over-length"));
  }

  /** A piece of 15 ft fits no 12 ft stick: the charge is paid, and any section may go along. */
  @Test
  void aPieceThatNeedsALongStickGetsIt() {
    WorkPlan plan = new WorkPlan.Builder().add(tube("rail", TUBE, 180 * INCH_MM, 1)).build();
    assertTrue(hasCharge(order(CatalogReader.read(STANDARD), none(), plan), "over-length"));
  }

  private static WorkPlan sawn(String key) {
    return new WorkPlan.Builder().add(tube("bar " + key, key, 70 * INCH_MM, 3)).build();
  }

  private static BigDecimal goods(MaterialOrder order) {
    return only(order).goods().amount();
  }

  private static boolean hasCharge(MaterialOrder order, String key) {
    return only(order).charges().stream().anyMatch(charge -> charge.key().equals(key));
  }

  @Test
  void aFullRackBuysNothing() {
    Catalog catalog = CatalogReader.read(STANDARD);
    WorkPlan plan =
        new WorkPlan.Builder()
            .add(tube("bar", TUBE, 30 * INCH_MM, 4))
            .add(PartNeed.withoutPlace("wire-035", 4.25, Phrase.of("test")))
            .add(
                new BoltNeed("bolt-0.500-20", 2 * INCH_MM, THREE_BOLTS, "joint", Phrase.of("test")))
            .build();
    MaterialOrder bought = order(catalog, none(), plan);
    OrderLine bolts = line(bought, "bolt-0.500-20");
    double boltMm = bought.materials().bolts().get(0).choice().lengthMm();
    Rack full =
        new Rack(
            List.of(new Rack.Stick("A", TUBE, 240 * INCH_MM)),
            List.of(),
            List.of(
                new Rack.Bin("wire-035", 0, new BigDecimal("4.25")),
                new Rack.Bin("bolt-0.500-20", boltMm, bolts.quantity())));
    MaterialOrder order = order(catalog, full, plan);
    assertEquals(List.of(), order.suppliers());
    assertEquals(Optional.empty(), order.total());
    assertEquals(3, order.rack().taken().size());
    assertEquals(List.of(), order.rack().rack().bins());
  }

  /** 240 in of stock less trim and four pieces and cuts; the rest is long enough to keep. */
  @Test
  void theRestOfAStickGoesBackUnderANewName() {
    Catalog catalog = CatalogReader.read(STANDARD);
    Rack rack =
        new Rack(
            List.of(
                new Rack.Stick("R6", TUBE, 240 * INCH_MM),
                new Rack.Stick("A", TUBE, 240 * INCH_MM)),
            List.of(),
            List.of());
    Rack after = order(catalog, rack, tubes(30, 4)).rack().rack();
    assertEquals(2, after.sticks().size());
    Rack.Stick rest = after.sticks().get(1);
    double leftIn = 240 - 0.25 - 4 * (30 + 0.062);
    assertEquals("R7", rest.name());
    assertEquals(Math.floor(leftIn * 32) / 32, rest.lengthMm() / INCH_MM, 1e-9);
  }

  @Test
  void twoJobsAreCutFromOneStick() {
    Catalog catalog = CatalogReader.read(STANDARD);
    SupplierOrder together = only(order(catalog, none(), tubes(100, 1), tubes(100, 1)));
    SupplierOrder one = only(order(catalog, none(), tubes(100, 1)));
    assertEquals(1, together.lines().get(0).quantity().intValue());
    assertTrue(together.goods().compareTo(one.goods().plus(one.goods())) < 0);
  }

  /** 12.5 lb of wire are two 11 lb spools at 38.50; 9.5 lb are left over. */
  @Test
  void wireIsOrderedByTheSpoolAndTheRestIsKept() {
    MaterialOrder order = order(CatalogReader.read(STANDARD), none(), part("wire-035", 12.5));
    OrderLine wire = line(order, "wire-035");
    assertEquals(new BigDecimal("2"), wire.quantity());
    assertEquals("11 lb spool", wire.unit());
    assertEquals("77.00", wire.amount().amount().toPlainString());
    assertEquals(0, new BigDecimal("9.5").compareTo(order.rack().rack().held("wire-035", 0)));
  }

  /** 8 at 10.00 are 80.00; 10 at 7.50 are 75.00, and two go on the rack. */
  @Test
  void buyingUpToAPriceBreakThatCostsLessIsTaken() {
    Catalog catalog =
        catalog(
            "\"items\": {\"tab\": {\"title\": \"tab\", \"unit\": \"each\", \"price\": 10.00,"
                + " \"bought\": \"part\", \"breaks\": [{\"from\": 10, \"price\": 7.50}]}}");
    OrderLine eight = line(order(catalog, none(), part("tab", 8)), "tab");
    assertEquals("75.00", eight.amount().amount().toPlainString());
    assertEquals(10, eight.quantity().intValue());
    OrderLine seven = line(order(catalog, none(), part("tab", 7)), "tab");
    assertEquals("70.00", seven.amount().amount().toPlainString());
    OrderLine twelve = line(order(catalog, none(), part("tab", 12)), "tab");
    assertEquals("90.00", twelve.amount().amount().toPlainString());
  }

  /** Arithmetic: from two on a stick costs 90.00 and a sheet 250.00; one is at the full price. */
  @Test
  void sticksAndSheetsHavePriceBreaksToo() {
    Catalog catalog =
        catalog(
            "\"bars\": {\"dom-1.50x0.120\": {\"sticks\": [{\"length\": \"12 ft\", \"price\":"
                + " 110.50, \"breaks\": [{\"from\": 2, \"price\": 90.00}]}]}}, \"plates\":"
                + " {\"plate-0.250\": {\"sheets\": [{\"width\": \"24 in\", \"length\": \"48 in\","
                + " \"price\": 300.00, \"breaks\": [{\"from\": 2, \"price\": 250.00}]}]}}");
    assertEquals("110.50", stick(catalog, 1).price().toPlainString());
    OrderLine two = stick(catalog, 2);
    assertEquals(2, two.quantity().intValue());
    assertEquals("180.00", two.amount().amount().toPlainString());
    PlateMaterial quarter = catalog.plate("plate-0.250");
    assertEquals("300.00", quarter.priceEach(24 * INCH_MM, 48 * INCH_MM, 1).toPlainString());
    assertEquals("250.00", quarter.priceEach(24 * INCH_MM, 48 * INCH_MM, 3).toPlainString());
  }

  private static OrderLine stick(Catalog catalog, int tubes) {
    return only(order(catalog, none(), tubes(100, tubes))).lines().get(0);
  }

  /** A 20 ft stick is over 16 ft; it costs 156.00, so freight is due and the minimum is reached. */
  @Test
  void freightAndOverLengthAreCharged() {
    SupplierOrder steel = only(order(CatalogReader.read(STANDARD), none(), tubes(200, 1)));
    assertEquals("156.00", steel.goods().amount().toPlainString());
    assertEquals(
        List.of("freight", "over-length sticks"),
        List.of(steel.charges().get(0).title(), steel.charges().get(1).title()));
    assertEquals("261.00", steel.total().amount().toPlainString());
  }

  @Test
  void aSmallOrderIsChargedAndOneUnderAMinimumWithoutAChargeIsTold() {
    SupplierOrder small = only(order(CatalogReader.read(STANDARD), none(), tubes(60, 1)));
    assertEquals("136.50", small.total().amount().toPlainString()); // 66.50 + 25 + 45
    Catalog strict =
        catalog(
            "\"suppliers\": {\"any\": {\"minimum_order\": 20.00}}, \"items\": {\"tab\": {\"title\":"
                + " \"tab\", \"unit\": \"each\", \"price\": 1.00, \"bought\": \"part\"}}");
    SupplierOrder refused = only(order(strict, none(), part("tab", 8)));
    assertEquals(List.of(), refused.charges());
    assertTrue(refused.remarks().get(0).contains("$12.00 short"), refused.remarks().get(0));
  }

  @Test
  void whatIsOutOfStockIsReplacedByItsAlternateAndSaidSo() {
    Catalog catalog =
        catalog(
            "\"items\": {\"tab\": {\"title\": \"tab\", \"unit\": \"each\", \"price\": 1.00,"
                + " \"bought\": \"part\", \"in_stock\": false, \"alternate\": \"lug\"}, \"lug\":"
                + " {\"title\": \"lug\", \"unit\": \"each\", \"price\": 2.00, \"bought\":"
                + " \"part\"}}");
    MaterialOrder order = order(catalog, none(), part("tab", 3));
    assertEquals("6.00", line(order, "lug").amount().amount().toPlainString());
    assertTrue(only(order).remarks().get(0).startsWith("lug in place of tab"));
  }

  @Test
  void anAlternateThatIsNotThereIsRefusedByTheCatalog() {
    assertThrows(
        BadInputException.class,
        () ->
            catalog(
                "\"items\": {\"tab\": {\"title\": \"tab\", \"unit\": \"each\", \"price\": 1.00,"
                    + " \"bought\": \"part\", \"alternate\": \"nothing\"}}"));
  }

  @Test
  void aStickThatIsOutOfStockIsNotCutFrom() {
    Catalog catalog =
        catalog(
            "\"bars\": {\"dom-1.50x0.120\": {\"sticks\": [{\"length\": \"20 ft\", \"price\": 1.00,"
                + " \"in_stock\": false}, {\"length\": \"12 ft\", \"price\": 110.50}]}}");
    assertEquals("$110.50", only(order(catalog, none(), tubes(60, 1))).goods().text());
  }

  /** 2026-11-25 is a Wednesday; from Wednesday five working days lead to Wednesday. */
  @Test
  void leadTimeCountsWorkingDays() {
    LocalDate wednesday = LocalDate.of(2026, 11, 25);
    assertEquals(LocalDate.of(2026, 12, 2), WorkingDays.after(wednesday, 5));
    assertEquals(wednesday, WorkingDays.after(wednesday, 0));
    assertEquals(LocalDate.of(2026, 11, 30), WorkingDays.after(LocalDate.of(2026, 11, 28), 1));
    LocalDate monday = LocalDate.of(2026, 12, 7);
    LocalDate orderBy = WorkingDays.orderBy(monday, 3);
    assertEquals(LocalDate.of(2026, 12, 1), orderBy);
    assertTrue(WorkingDays.after(orderBy, 3).isBefore(monday));
    assertFalse(WorkingDays.after(orderBy.plusDays(1), 3).isBefore(monday.minusDays(3)));
  }

  private static OrderLine line(MaterialOrder order, String key) {
    for (SupplierOrder supplier : order.suppliers()) {
      for (OrderLine line : supplier.lines()) {
        if (line.key().equals(key)) {
          return line;
        }
      }
    }
    throw new AssertionError("no line " + key);
  }
}

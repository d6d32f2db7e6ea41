package trammel.planning.drawings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import trammel.cutting.sheets.CutSheet;
import trammel.cutting.sheets.PlacedPart;
import trammel.cutting.sheets.SheetStock;
import trammel.trade.plates.Bounds;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Plate;
import trammel.trade.plates.TubeBracket;

class NestDrawingTest {
  private static final Plate TAB =
      TubeBracket.at("axle tab", 6.35, 76.2, 90, Math.toRadians(100), 16).plate("A36");
  private static final SheetStock SHEET =
      SheetStock.bought("610 x 1219 mm", 1219.2, 609.6, BigDecimal.TEN);

  private static NestDrawing nest() {
    Bounds bounds = TAB.outline().bounds();
    return new NestDrawing(
        new CutSheet(
            SHEET,
            List.of(
                new PlacedPart("axle tab", 10, 20, bounds.widthMm(), bounds.heightMm(), 0),
                new PlacedPart("axle tab", 300, 40, bounds.heightMm(), bounds.widthMm(), 90))),
        Map.of("axle tab", TAB),
        "1/4 in plate, sheet 1 of 1");
  }

  @Test
  void everyPlateLiesWhereThePlanPutsIt() {
    List<Outline> placed = nest().placed();
    for (int i = 0; i < placed.size(); i++) {
      PlacedPart part = nest().sheet().parts().get(i);
      Bounds bounds = placed.get(i).bounds();
      assertEquals(part.xMm(), bounds.minXMm(), 1e-9);
      assertEquals(part.yMm(), bounds.minYMm(), 1e-9);
      assertEquals(part.widthMm(), bounds.widthMm(), 1e-9);
      assertEquals(part.heightMm(), bounds.heightMm(), 1e-9);
    }
  }

  @Test
  void theDrawingReadBackHoldsTheAreaOfAllPlates() {
    List<DxfReader.Entity> entities = DxfReader.entities(nest().dxf(DxfUnits.MILLIMETRES).text());
    double cutMm2 =
        DxfReader.closedArea(entities, DxfDrawing.CUT_OUTER, 1e-3)
            - DxfReader.closedArea(entities, DxfDrawing.CUT_INNER, 1e-3);
    assertEquals(2 * TAB.outline().areaMm2(), cutMm2, 1e-2);
  }

  /** Two names of 50 letters do not fit beside each other under a sheet of 610 mm. */
  @Test
  void longNamesInTheKeyStandBelowEachOther() {
    String first = "left rail local boxing at lateral-bar frame plate";
    String second = "right rail local boxing at lateral-bar frame plate";
    Bounds bounds = TAB.outline().bounds();
    NestDrawing nest =
        new NestDrawing(
            new CutSheet(
                SheetStock.bought("610 x 610 mm", 609.6, 609.6, BigDecimal.TEN),
                List.of(
                    new PlacedPart(first, 10, 20, bounds.widthMm(), bounds.heightMm(), 0),
                    new PlacedPart(second, 300, 20, bounds.widthMm(), bounds.heightMm(), 0))),
            Map.of(first, TAB, second, TAB),
            "1/4 in plate, sheet 1 of 1");
    List<Note> key =
        nest.dxf(DxfUnits.MILLIMETRES).legend().stream()
            .filter(note -> note.text().contains("boxing"))
            .toList();
    assertEquals(2, key.size());
    assertEquals(key.get(0).at().xMm(), key.get(1).at().xMm());
    assertTrue(key.get(1).at().yMm() < key.get(0).at().yMm() - key.get(0).heightMm());
  }

  @Test
  void theSheetsEdgeIsOnALayerOfItsOwn() {
    long marked =
        DxfReader.entities(nest().dxf(DxfUnits.MILLIMETRES).text()).stream()
            .filter(entity -> entity.layer().equals(DxfDrawing.BORDER))
            .filter(entity -> entity.kind().equals("LINE"))
            .count();
    assertEquals(4, marked);
  }

  @Test
  void aPartWithoutItsPlateIsRefusedByName() {
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () -> new NestDrawing(nest().sheet(), Map.of(), "sheet"));
    assertTrue(refused.getMessage().contains("axle tab"), refused.getMessage());
  }
}

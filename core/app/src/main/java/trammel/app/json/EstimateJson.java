package trammel.app.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.text.Cautions;
import trammel.app.text.Stops;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.TubeNeed;
import trammel.cutting.bars.CutBar;
import trammel.cutting.bars.PlacedPiece;
import trammel.cutting.sheets.CutSheet;
import trammel.cutting.sheets.PlacedPart;
import trammel.engine.checks.CheckResult;
import trammel.engine.quantity.ReaderUnits;
import trammel.planning.estimate.BoltLine;
import trammel.planning.estimate.Estimate;
import trammel.planning.estimate.PartLine;
import trammel.planning.estimate.PlateCut;
import trammel.planning.estimate.SectionCut;
import trammel.trade.labour.OperationLine;
import trammel.trade.money.CostBuildUp;
import trammel.trade.money.PriceLine;
import trammel.trade.plates.Outline;
import trammel.trade.welding.SeamEstimate;

/** A plan and its price for machines. */
public final class EstimateJson {
  private EstimateJson() {}

  /** Checks, plan and price. */
  public static Map<String, Object> quote(
      Estimate estimate, List<CheckResult> results, Stops stops) {
    Map<String, Object> json = plan(estimate, stops);
    json.put("checks", CheckJson.of(estimate.draft(), results));
    json.put("price", price(estimate.price(), estimate.draft().printer()));
    return json;
  }

  /** Parts, bolts, tubes, plates, welds and hours. */
  public static Map<String, Object> plan(Estimate estimate, Stops stops) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("job", estimate.draft().job().header().number());
    json.put(StopsJson.FIELD, StopsJson.of(stops));
    json.put("parts", parts(estimate));
    json.put("bolts", bolts(estimate));
    json.put("tubes", tubes(estimate));
    json.put("plates", plates(estimate));
    json.put("welds", welds(estimate));
    json.put("hours", hours(estimate));
    json.put("steel_kg", estimate.materials().steelMassKg());
    json.put("caution", Cautions.SCREENING);
    return json;
  }

  /** What is sawn and cut, and from which sticks and sheets. */
  public static Map<String, Object> cutLists(Estimate estimate, Stops stops) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("job", estimate.draft().job().header().number());
    json.put(StopsJson.FIELD, StopsJson.of(stops));
    json.put("tubes", tubes(estimate));
    json.put("plates", plates(estimate));
    json.put("sheets", sheets(estimate));
    return json;
  }

  private static List<Object> sheets(Estimate estimate) {
    List<Object> rows = new ArrayList<>();
    for (PlateCut cut : estimate.materials().plates()) {
      for (CutSheet sheet : cut.plan().sheets()) {
        List<Object> parts = new ArrayList<>();
        for (PlacedPart part : sheet.parts()) {
          Map<String, Object> row = new LinkedHashMap<>();
          row.put("name", part.partId());
          row.put("x_mm", part.xMm());
          row.put("y_mm", part.yMm());
          row.put("turn_deg", part.turnDeg());
          parts.add(row);
        }
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("plate", cut.material().key());
        row.put("sheet", sheet.stock().id());
        row.put("status", cut.plan().status().word());
        row.put("parts", parts);
        rows.add(row);
      }
    }
    return rows;
  }

  private static List<Object> parts(Estimate estimate) {
    ReaderUnits units = estimate.draft().printer();
    List<Object> rows = new ArrayList<>();
    for (PartLine part : estimate.materials().parts()) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("item", part.item().key());
      row.put("title", part.item().title());
      row.put("quantity", part.quantity());
      row.put("unit", part.item().unit());
      row.put("why", part.why().in(units));
      rows.add(row);
    }
    return rows;
  }

  private static List<Object> bolts(Estimate estimate) {
    List<Object> rows = new ArrayList<>();
    for (BoltLine bolt : estimate.materials().bolts()) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("size", bolt.size().title());
      row.put("length_mm", bolt.choice().lengthMm());
      row.put("grip_mm", bolt.gripMm());
      row.put("quantity", bolt.quantity());
      row.put("torque_Nm", bolt.torqueNmm() / 1000);
      row.put("where", bolt.where());
      rows.add(row);
    }
    return rows;
  }

  private static List<Object> tubes(Estimate estimate) {
    ReaderUnits units = estimate.draft().printer();
    List<Object> sections = new ArrayList<>();
    for (SectionCut section : estimate.materials().sections()) {
      List<Object> pieces = new ArrayList<>();
      for (TubeNeed need : section.needs()) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("name", need.name());
        row.put("quantity", need.quantity());
        row.put("cut_length_mm", need.cutLengthMm());
        row.put("ends", need.ends().in(units));
        row.put("why", need.why().in(units));
        pieces.add(row);
      }
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("section", section.material().key());
      row.put("pieces", pieces);
      row.put("sticks", sticks(section));
      row.put("status", section.plan().status().word());
      sections.add(row);
    }
    return sections;
  }

  private static List<Object> sticks(SectionCut section) {
    List<Object> sticks = new ArrayList<>();
    for (CutBar bar : section.plan().bars()) {
      List<Object> pieces = new ArrayList<>();
      for (PlacedPiece piece : bar.pieces()) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("name", piece.pieceId());
        row.put("at_mm", piece.atMm());
        row.put("length_mm", piece.lengthMm());
        pieces.add(row);
      }
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("length_mm", bar.stock().lengthMm());
      row.put("pieces", pieces);
      row.put("left_mm", bar.offcutMm());
      sticks.add(row);
    }
    return sticks;
  }

  private static List<Object> plates(Estimate estimate) {
    ReaderUnits units = estimate.draft().printer();
    List<Object> rows = new ArrayList<>();
    for (PlateCut cut : estimate.materials().plates()) {
      for (PlateNeed need : cut.needs()) {
        Outline outline = need.plate().outline();
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("name", need.plate().name());
        row.put("plate", cut.material().key());
        row.put("quantity", need.quantity());
        row.put("thickness_mm", need.plate().thicknessMm());
        row.put("width_mm", outline.bounds().widthMm());
        row.put("height_mm", outline.bounds().heightMm());
        row.put("area_mm2", outline.areaMm2());
        row.put("cut_length_mm", outline.cutLengthMm());
        row.put("holes", outline.holes().size());
        row.put("mass_kg", need.plate().weightKg());
        row.put("why", need.why().in(units));
        rows.add(row);
      }
    }
    return rows;
  }

  private static Map<String, Object> welds(Estimate estimate) {
    ReaderUnits units = estimate.draft().printer();
    List<Object> rows = new ArrayList<>();
    for (SeamEstimate line : estimate.welds().lines()) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("name", line.seam().name());
      row.put("kind", line.seam().joint().title());
      row.put("size_mm", line.seam().joint().sizeMm());
      row.put("length_mm", line.seam().lengthMm());
      row.put("count", line.seam().count());
      row.put("starts", line.seam().starts());
      row.put("position", line.seam().position().title());
      row.put("place", line.seam().place().title());
      row.put("why", line.seam().why().in(units));
      rows.add(row);
    }
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("seams", rows);
    json.put("length_mm", estimate.welds().lengthMm());
    json.put("deposit_kg", estimate.welds().depositKg());
    json.put("wire_kg", estimate.welds().fillerKg());
    json.put("gas_litres", estimate.welds().gasLitres());
    json.put("torch_hours", estimate.welds().clockHours());
    return json;
  }

  private static Map<String, Object> hours(Estimate estimate) {
    ReaderUnits units = estimate.draft().printer();
    List<Object> rows = new ArrayList<>();
    for (OperationLine line : estimate.hours().lines()) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("operation", line.operation().key());
      row.put("title", line.operation().title());
      row.put("driver", line.driverText().in(units));
      row.put("low_h", line.hours().low());
      row.put("likely_h", line.hours().likely());
      row.put("high_h", line.hours().high());
      row.put("mean_h", line.hours().mean());
      row.put("why", line.why().in(units));
      rows.add(row);
    }
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("operations", rows);
    json.put("mean_h", estimate.hours().meanHours());
    json.put("p50_h", estimate.hours().p50Hours());
    json.put("p80_h", estimate.hours().p80Hours());
    return json;
  }

  static Map<String, Object> price(CostBuildUp price, ReaderUnits units) {
    List<Object> rows = new ArrayList<>();
    for (PriceLine line : price.lines()) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("line", line.line().key());
      row.put("title", line.line().title());
      row.put("class", line.line().costClass().title());
      row.put("quantity", line.line().quantityText());
      row.put("how", line.how());
      row.put("cost", line.cost().amount());
      row.put("price", line.price().amount());
      row.put("taxable", line.taxable());
      row.put("why", line.line().why().in(units));
      rows.add(row);
    }
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("currency", price.terms().currency().getCurrencyCode());
    json.put("lines", rows);
    json.put("cost", price.cost().amount());
    json.put("subtotal", price.subtotal().amount());
    json.put("taxable", price.taxable().amount());
    json.put("tax_name", price.terms().tax().name());
    json.put("tax", price.tax().amount());
    json.put("rounding", price.cashRounding().amount());
    json.put("total", price.total().amount());
    json.put("deposit", price.payments().deposit().amount());
    json.put("progress", progress(price));
    json.put("balance", price.payments().balance().amount());
    json.put("valid_days", price.terms().validDays());
    return json;
  }

  private static List<Object> progress(CostBuildUp price) {
    List<Object> rows = new ArrayList<>();
    for (int i = 0; i < price.terms().progress().size(); i++) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("at", price.terms().progress().get(i).when());
      row.put("amount", price.payments().progress().get(i).amount());
      rows.add(row);
    }
    return rows;
  }
}

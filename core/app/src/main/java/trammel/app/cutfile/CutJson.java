package trammel.app.cutfile;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.cutting.CuttingStatus;

/** Cutting plans as maps and lists under the keys of the format, sizes in the unit of the file. */
public final class CutJson {
  private CutJson() {}

  /** Name, unit and result; a job of several sections has a result and a plan for each. */
  public static Map<String, Object> of(CutFile file, List<CutPlan> plans) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("name", file.name());
    document.put("unit", file.unit());
    if (!file.format().equals(CutFile.BAR_JOB)) {
      addResult(document, plans.get(0));
      document.put("plan", stock(plans.get(0).stock()));
      return document;
    }
    addTotal(document, plans);
    List<Object> sections = new ArrayList<>(plans.size());
    for (CutPlan plan : plans) {
      Map<String, Object> section = new LinkedHashMap<>();
      section.put("section", plan.section());
      addResult(section, plan);
      section.put("plan", stock(plan.stock()));
      sections.add(section);
    }
    document.put("sections", sections);
    return document;
  }

  private static void addResult(Map<String, Object> result, CutPlan plan) {
    add(result, plan.objective(), plan.lowerBound(), plan.status(), plan.seconds());
  }

  private static void addTotal(Map<String, Object> result, List<CutPlan> plans) {
    BigDecimal objective = BigDecimal.ZERO;
    BigDecimal lowerBound = BigDecimal.ZERO;
    double seconds = 0;
    CuttingStatus status = CuttingStatus.PROVEN_OPTIMAL;
    for (CutPlan plan : plans) {
      objective = objective.add(plan.objective());
      lowerBound = lowerBound.add(plan.lowerBound());
      seconds += plan.seconds();
      status = plan.status() == CuttingStatus.BOUNDED ? plan.status() : status;
    }
    add(result, CutNumbers.plain(objective), CutNumbers.plain(lowerBound), status, seconds);
  }

  private static void add(
      Map<String, Object> result,
      BigDecimal objective,
      BigDecimal lowerBound,
      CuttingStatus status,
      double seconds) {
    result.put("objective", objective);
    result.put("lowerBound", lowerBound);
    result.put("status", status.word());
    result.put("seconds", CutNumbers.plain(seconds));
  }

  private static List<Object> stock(List<CutStock> stock) {
    List<Object> list = new ArrayList<>(stock.size());
    for (CutStock one : stock) {
      Map<String, Object> map = new LinkedHashMap<>();
      map.put("stock", one.id());
      List<Object> pieces = new ArrayList<>(one.pieces().size());
      for (CutPiece piece : one.pieces()) {
        pieces.add(piece(piece));
      }
      map.put("pieces", pieces);
      if (one.left().isPresent()) {
        map.put("left", one.left().get());
      }
      list.add(map);
    }
    return list;
  }

  private static Map<String, Object> piece(CutPiece piece) {
    Map<String, Object> map = new LinkedHashMap<>();
    if (piece.size().size() == 1) {
      map.put("length", piece.size().get(0));
      map.put("at", piece.x());
      return map;
    }
    if (piece.size().isEmpty()) {
      map.put("id", piece.id());
    } else {
      map.put("w", piece.size().get(0));
      map.put("h", piece.size().get(1));
    }
    map.put("x", piece.x());
    map.put("y", piece.y());
    map.put("turn", piece.turn());
    return map;
  }
}

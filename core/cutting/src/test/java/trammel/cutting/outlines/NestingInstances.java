package trammel.cutting.outlines;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import tools.jackson.databind.JsonNode;
import trammel.cutting.sheets.SheetStock;

/** Turns reference files into problems; one unit of the file counts as one millimetre. */
public final class NestingInstances {
  private NestingInstances() {}

  static NestingProblem problem(JsonNode file) {
    List<SheetStock> stock = new ArrayList<>();
    for (JsonNode sheet : file.get("sheets")) {
      JsonNode available = sheet.get("available");
      stock.add(
          new SheetStock(
              sheet.get("id").asString(),
              sheet.get("width").asDouble(),
              sheet.get("height").asDouble(),
              new BigDecimal(sheet.get("price").asString()),
              available.isNull() ? OptionalInt.empty() : OptionalInt.of(available.asInt()),
              false));
    }
    return new NestingProblem(
        stock, parts(file), file.get("margin").asDouble(), file.get("kerf").asDouble());
  }

  public static NestingStripProblem strip(JsonNode file) {
    return new NestingStripProblem(
        file.get("strip").get("width").asDouble(),
        parts(file),
        file.get("margin").asDouble(),
        file.get("kerf").asDouble());
  }

  private static List<OutlinePart> parts(JsonNode file) {
    List<OutlinePart> parts = new ArrayList<>();
    for (JsonNode part : file.get("parts")) {
      List<OutlinePoint> outline = new ArrayList<>();
      for (JsonNode corner : part.get("polygon")) {
        outline.add(new OutlinePoint(corner.get(0).asDouble(), corner.get(1).asDouble()));
      }
      List<Double> turns = new ArrayList<>();
      for (JsonNode turn : part.get("rotations")) {
        turns.add(turn.asDouble());
      }
      parts.add(
          new OutlinePart(
              "part " + part.get("id").asString(), outline, turns, part.get("qty").asInt()));
    }
    return parts;
  }
}

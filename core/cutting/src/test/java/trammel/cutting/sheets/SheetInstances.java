package trammel.cutting.sheets;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import tools.jackson.databind.JsonNode;

/** Turns reference files into problems; one unit of the file counts as one millimetre. */
final class SheetInstances {
  private SheetInstances() {}

  static SheetCuttingProblem problem(JsonNode file) {
    List<SheetStock> stock = new ArrayList<>();
    for (JsonNode sheet : file.get("sheets")) {
      JsonNode available = sheet.get("available");
      BigDecimal price = new BigDecimal(sheet.get("price").asString());
      stock.add(
          new SheetStock(
              sheet.get("id").asString(),
              sheet.get("width").asDouble(),
              sheet.get("height").asDouble(),
              price,
              available.isNull() ? OptionalInt.empty() : OptionalInt.of(available.asInt()),
              price.signum() == 0));
    }
    return new SheetCuttingProblem(
        stock,
        parts(file),
        file.get("margin").asDouble(),
        file.get("kerf").asDouble(),
        file.get("guillotine").asBoolean() ? CuttingMethod.GUILLOTINE : CuttingMethod.FREE,
        1);
  }

  static StripProblem strip(JsonNode file) {
    return new StripProblem(
        file.get("strip").get("width").asDouble(),
        parts(file),
        file.get("margin").asDouble(),
        file.get("kerf").asDouble());
  }

  private static List<SheetPart> parts(JsonNode file) {
    List<SheetPart> parts = new ArrayList<>();
    for (JsonNode part : file.get("parts")) {
      parts.add(
          new SheetPart(
              "part " + (parts.size() + 1),
              part.get("w").asDouble(),
              part.get("h").asDouble(),
              part.get("qty").asInt(),
              file.get("rotation").asBoolean()));
    }
    return parts;
  }
}

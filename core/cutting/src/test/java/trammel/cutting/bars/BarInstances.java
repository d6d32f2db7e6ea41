package trammel.cutting.bars;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import tools.jackson.databind.JsonNode;

/** Turns reference files into problems; one unit of the file counts as one millimetre. */
final class BarInstances {
  private BarInstances() {}

  static BarCuttingProblem problem(JsonNode section) {
    List<BarStock> stock = new ArrayList<>();
    for (JsonNode bar : section.get("stock")) {
      JsonNode available = bar.get("available");
      stock.add(
          new BarStock(
              bar.get("id").asString(),
              bar.get("length").asDouble(),
              new BigDecimal(bar.get("price").asString()),
              available.isNull() ? OptionalInt.empty() : OptionalInt.of(available.asInt()),
              bar.has("remnant") && bar.get("remnant").asBoolean()));
    }
    List<BarPiece> pieces = new ArrayList<>();
    for (JsonNode piece : section.get("pieces")) {
      pieces.add(
          new BarPiece(
              "piece " + (pieces.size() + 1),
              piece.get("length").asDouble(),
              piece.get("qty").asInt()));
    }
    return new BarCuttingProblem(stock, pieces, section.get("kerf").asDouble(), 0, 0);
  }

  /** The price of the best plan known, or nothing. */
  static List<BigDecimal> best(JsonNode section) {
    JsonNode best = section.get("best");
    return best == null || best.isNull()
        ? List.of()
        : List.of(new BigDecimal(best.get("objective").asString()));
  }

  /** A problem with one open stock length at price 1: the price is the number of bars. */
  static BarCuttingProblem oneStock(double lengthMm, double kerfMm, double[][] lengthAndCount) {
    List<BarPiece> pieces = new ArrayList<>();
    for (double[] row : lengthAndCount) {
      pieces.add(new BarPiece("piece " + row[0], row[0], (int) row[1]));
    }
    return new BarCuttingProblem(
        List.of(BarStock.bought("bar", lengthMm, BigDecimal.ONE)), pieces, kerfMm, 0, 0);
  }
}

package trammel.cutting.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import trammel.cutting.ReferenceFiles;
import trammel.cutting.outlines.NestingInstances;
import trammel.cutting.outlines.NestingStripProblem;
import trammel.cutting.outlines.OutlinePart;

class ValidationSetTest {
  /** Published usages are rounded to a hundredth of a per cent, lengths to a hundredth. */
  private static final double ROUNDING = 3e-4;

  private static NestingStripProblem unseen(String name) {
    return NestingInstances.strip(ReferenceFiles.read("validation", name));
  }

  /** Kinds, parts and widths: the Items, Demand and Strip of the source that each file names. */
  @ParameterizedTest
  @CsvSource({
    "jakobs2, 25, 25, 70",
    "mao, 9, 20, 2550",
    "shapes1, 4, 43, 40",
    "trousers, 17, 64, 79"
  })
  void anUnseenStripHasThePartsOfItsSource(String name, int kinds, int parts, double widthMm) {
    NestingStripProblem problem = unseen(name);
    assertEquals(kinds, problem.parts().size());
    assertEquals(parts, problem.parts().stream().mapToInt(OutlinePart::quantity).sum());
    assertEquals(widthMm, problem.widthMm());
  }

  /**
   * Lengths and usages of Gomes and Oliveira, European Journal of Operational Research 171 (2006)
   * 811-829, from memory: a usage is the area of all parts over that of the strip, so that each
   * pair says what the parts add up to. A corner gone wrong would show in it.
   */
  @ParameterizedTest
  @CsvSource({
    "jakobs2, 24.97, 0.7728",
    "mao, 1785.73, 0.8254",
    "shapes1, 56.00, 0.7125",
    "trousers, 242.11, 0.8996"
  })
  void theOutlinesAddUpToThePublishedArea(String name, double lengthMm, double usage) {
    NestingStripProblem problem = unseen(name);
    double areaMm2 = 0;
    for (OutlinePart part : problem.parts()) {
      areaMm2 += part.areaMm2() * part.quantity();
    }
    assertEquals(usage * lengthMm * problem.widthMm(), areaMm2, ROUNDING * areaMm2);
  }

  /** Oliveira, Gomes, Ferreira (2000): shapes1 are the parts of shapes0, free to turn by half. */
  @Test
  void shapesOneAreThoseOfShapesZeroFromAnotherConversion() {
    JsonNode zero = ReferenceFiles.read("poly2d", "shapes0").get("parts");
    JsonNode one = ReferenceFiles.read("validation", "shapes1").get("parts");
    assertEquals(zero.size(), one.size());
    for (int i = 0; i < one.size(); i++) {
      assertEquals(zero.get(i).get("polygon"), one.get(i).get("polygon"), "part " + i);
      assertEquals(zero.get(i).get("qty"), one.get(i).get("qty"), "part " + i);
    }
  }
}

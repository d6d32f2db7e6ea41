package trammel.app.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class JsonTest {
  @Test
  void mapsKeepTheirOrderAndEveryKindOfValueItsForm() {
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("text", "1/2 in \"flat\"\n");
    map.put("list", Arrays.asList(1, 2L, 0.1, null, true));
    map.put("money", new BigDecimal("12.50"));
    map.put("group", Map.of());
    assertEquals(
        "{\"text\":\"1/2 in \\\"flat\\\"\\n\",\"list\":[1,2,0.1,null,true],\"money\":12.50,"
            + "\"group\":{}}",
        Json.text(map)
            .replaceAll("(?m)^\\s+|\\R|(?<=[\\[,:]) | (?=[\\]:])", "")
            .replace("{ }", "{}"));
  }

  @Test
  void whatIsWrittenIsReadAgainAlike() {
    double third = 1.0 / 3;
    JsonNode read = JsonMapper.shared().readTree(Json.text(Map.of("a", List.of(third, -0.5e-9))));
    assertEquals(third, read.get("a").get(0).asDouble());
    assertEquals(-0.5e-9, read.get("a").get(1).asDouble());
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void aNumberThatJsonDoesNotKnowIsRefused(double number) {
    assertThrows(IllegalStateException.class, () -> Json.text(List.of(number)));
  }

  @Test
  void aValueOfAnotherKindIsRefused() {
    assertThrows(IllegalStateException.class, () -> Json.text(List.of(Optional.empty())));
  }
}

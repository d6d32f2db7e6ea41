package trammel.reading.fields;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a choice is called on paper. */
class ChoiceNamesTest {
  private static final Field<String> SIDE =
      Field.choice("side", "side of the rails", List.of("inboard", "outboard"))
          .calling(Map.of("outboard", "bars outside the rails"));

  @Test
  void aChoiceKeepsItsNameThroughEveryRefinement() {
    for (Field<String> field :
        List.of(SIDE, SIDE.optional(), SIDE.withDefault("inboard"), SIDE.measuredFrom("above"))) {
      assertEquals(Optional.of("bars outside the rails"), field.called("outboard"));
      assertEquals(Optional.empty(), field.called("inboard"));
    }
  }

  @Test
  void aNameForWhatIsNoChoiceIsRefused() {
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class, () -> SIDE.calling(Map.of("above", "over the rails")));
    assertTrue(refused.getMessage().contains("above"), refused.getMessage());
  }
}

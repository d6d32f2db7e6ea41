package trammel.app.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.reading.fields.Field;

/** A customer reads words, not the keys of a job file. */
class ChoiceWordsTest {
  private static final Catalog STANDARD =
      CatalogReader.read(Path.of("..", "..", "catalogs", "standard"));

  @Test
  void aChoiceIsCalledAsItsFieldCallsIt() {
    Field<String> mounting =
        Field.choice("mounting", "side of the rails", List.of("inboard", "outboard"))
            .calling(Map.of("outboard", "bars outside the frame rails"));
    assertEquals("bars outside the frame rails", ChoiceWords.of(mounting, "outboard", STANDARD));
    assertEquals("side of the rails: inboard", ChoiceWords.of(mounting, "inboard", STANDARD));
  }

  @Test
  void anEntryOfTheCatalogIsCalledByItsTitle() {
    String key = STANDARD.bars().keySet().iterator().next();
    Field<String> tube = Field.choice("tube", "tube of the bars; usually round", List.of(key));
    assertEquals(STANDARD.bars().get(key).title(), ChoiceWords.of(tube, key, STANDARD));
  }
}

package trammel.engine.quantity;

import java.util.List;
import java.util.stream.Collectors;

/** Phrases in a row with words between them. */
record PhraseRow(String between, List<Phrase> phrases) implements Phrase {
  PhraseRow {
    Given.present("text between phrases", between, "Empty for none.");
    phrases = List.copyOf(phrases);
  }

  @Override
  public String in(ReaderUnits units) {
    return phrases.stream().map(phrase -> phrase.in(units)).collect(Collectors.joining(between));
  }

  @Override
  public String toString() {
    return in(InsideUnits.INSIDE);
  }
}

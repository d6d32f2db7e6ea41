package trammel.engine.quantity;

/** Words without a quantity. */
record VerbatimPhrase(String words) implements Phrase {
  VerbatimPhrase {
    Given.present("text of a phrase", words, "Give its words.");
  }

  @Override
  public String in(ReaderUnits units) {
    return words;
  }

  @Override
  public String toString() {
    return in(InsideUnits.INSIDE);
  }
}

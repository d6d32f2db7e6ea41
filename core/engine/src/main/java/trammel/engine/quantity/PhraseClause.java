package trammel.engine.quantity;

/** A phrase in one line, without a full stop at its end. */
record PhraseClause(Phrase phrase) implements Phrase {
  PhraseClause {
    Given.present("phrase", phrase, "Give its words.");
  }

  @Override
  public String in(ReaderUnits units) {
    String line = String.join(" ", phrase.in(units).strip().lines().toList());
    return line.endsWith(".") ? line.substring(0, line.length() - 1) : line;
  }

  @Override
  public String toString() {
    return in(InsideUnits.INSIDE);
  }
}

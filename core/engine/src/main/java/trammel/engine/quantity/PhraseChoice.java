package trammel.engine.quantity;

/** One phrase where two amounts read alike, else the other. */
record PhraseChoice(Amount one, Amount other, Phrase alike, Phrase apart) implements Phrase {
  PhraseChoice {
    Given.present("phrase for amounts that are alike", alike, "Give both.");
    Given.present("phrase for amounts that differ", apart, "Give both.");
  }

  @Override
  public String in(ReaderUnits units) {
    return (one.in(units).equals(other.in(units)) ? alike : apart).in(units);
  }

  @Override
  public String toString() {
    return in(InsideUnits.INSIDE);
  }
}

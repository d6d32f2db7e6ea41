package trammel.engine.quantity;

import java.util.List;

/** A template and what goes into its places. */
record FilledPhrase(String template, List<Object> terms) implements Phrase {
  /** About what a term is long, for room. */
  private static final int TERM_LENGTH = 12;

  FilledPhrase {
    terms = List.copyOf(terms);
    int places = places(template);
    if (places != terms.size()) {
      throw new IllegalArgumentException(
          "The phrase '"
              + template
              + "' was given "
              + terms.size()
              + " terms for its "
              + places
              + " places; each place needs one. Give as many as it has "
              + PLACE
              + ".");
    }
    for (Object term : terms) {
      refuseOther(template, term);
    }
  }

  private static int places(String template) {
    int places = 0;
    int at = template.indexOf(PLACE);
    while (at >= 0) {
      places++;
      at = template.indexOf(PLACE, at + PLACE.length());
    }
    return places;
  }

  private static void refuseOther(String template, Object term) {
    boolean isTaken =
        term instanceof Amount
            || term instanceof Phrase
            || term instanceof String
            || term instanceof Integer
            || term instanceof Long;
    if (!isTaken) {
      throw new IllegalArgumentException(
          "The phrase '"
              + template
              + "' was given "
              + term
              + ", a "
              + term.getClass().getSimpleName()
              + "; a term is an amount, a phrase, a text or a whole number. Say what kind of"
              + " quantity it is, such as length(mm).");
    }
  }

  @Override
  public String in(ReaderUnits units) {
    StringBuilder text = new StringBuilder(template.length() + TERM_LENGTH * terms.size());
    int from = 0;
    for (Object term : terms) {
      int place = template.indexOf(PLACE, from);
      text.append(template, from, place).append(worded(term, units));
      from = place + PLACE.length();
    }
    return text.append(template, from, template.length()).toString();
  }

  /** Where the template has words of its own, no term is put into words to see that it has any. */
  @Override
  public boolean isBlank() {
    return template.replace(PLACE, "").isBlank() && Phrase.super.isBlank();
  }

  private static String worded(Object term, ReaderUnits units) {
    if (term instanceof Amount amount) {
      return amount.in(units);
    }
    return term instanceof Phrase phrase ? phrase.in(units) : term.toString();
  }

  @Override
  public String toString() {
    return in(InsideUnits.INSIDE);
  }
}

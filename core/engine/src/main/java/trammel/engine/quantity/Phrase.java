package trammel.engine.quantity;

import java.util.Arrays;
import java.util.List;

/**
 * Words with quantities among them, made where something is decided and put into units where
 * somebody reads them: a reason, a refusal, what a check has found. Phrases of the same words and
 * quantities are equal.
 *
 * <pre>{@code
 * Phrase.of("the web stands {} inside the joint, {} is needed", length(foundMm), length(neededMm))
 * }</pre>
 */
public sealed interface Phrase
    permits VerbatimPhrase, FilledPhrase, PhraseRow, PhrasePair, PhraseChoice, PhraseClause {
  /** Where a term goes in a template. */
  String PLACE = "{}";

  /** Says nothing. */
  Phrase NONE = new VerbatimPhrase("");

  /** The words in the units of the reader. */
  String in(ReaderUnits units);

  /**
   * A phrase with its terms in the places <code>{}</code> of a template, in their order.
   *
   * @param template the words
   * @param terms one for each place: an {@link Amount}, another phrase, a text that is printed as
   *     it is, or a whole number
   * @throws IllegalArgumentException if the terms are more or fewer than the places, or one of them
   *     is of another type, such as a number that does not say its unit
   */
  static Phrase of(String template, Object... terms) {
    return terms.length == 0 && !template.contains(PLACE)
        ? new VerbatimPhrase(template)
        : new FilledPhrase(template, Arrays.asList(terms));
  }

  /** Words as they are, braces and all: a name that somebody gave, what a library says. */
  static Phrase text(String words) {
    return new VerbatimPhrase(words);
  }

  /** Phrases in a row with words between them. */
  static Phrase joined(String between, List<Phrase> phrases) {
    return new PhraseRow(between, phrases);
  }

  /**
   * One phrase where two amounts read alike in the reader's units, else the other: two quantities
   * that differ by less than is printed are not told apart.
   */
  static Phrase whereAlike(Amount one, Amount other, Phrase alike, Phrase apart) {
    return new PhraseChoice(one, other, alike, apart);
  }

  /** Both, with a semicolon between; where this one says the other already, only this one. */
  default Phrase and(Phrase other) {
    return new PhrasePair(this, other);
  }

  /** The same in one line and without a full stop at its end, as it stands in brackets. */
  default Phrase asClause() {
    return new PhraseClause(this);
  }

  /** Whether it says certain words, of which none is a quantity. */
  default boolean mentions(String words) {
    return in(InsideUnits.INSIDE).contains(words);
  }

  /** Whether there is nothing to read. */
  default boolean isBlank() {
    return in(InsideUnits.INSIDE).isBlank();
  }
}

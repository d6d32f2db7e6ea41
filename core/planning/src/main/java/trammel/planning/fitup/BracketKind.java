package trammel.planning.fitup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A kind of bracket with its letter: one, or two that are mirror images of each other.
 *
 * @param letter by which every sheet calls it
 * @param shown the one that is drawn
 * @param mirrored its mirror image on the other side, if there is one
 */
public record BracketKind(String letter, Bracket shown, Optional<Bracket> mirrored) {
  /** Letters that are not taken for numbers. */
  private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

  /** The kinds among brackets, in their order. */
  public static List<BracketKind> of(List<Bracket> brackets) {
    List<BracketKind> kinds = new ArrayList<>();
    List<Bracket> left = new ArrayList<>(brackets);
    while (!left.isEmpty()) {
      Bracket shown = left.remove(0);
      Optional<Bracket> mirrored = left.stream().filter(shown::mirrors).findFirst();
      mirrored.ifPresent(left::remove);
      kinds.add(new BracketKind(letter(kinds.size()), shown, mirrored));
    }
    return kinds;
  }

  private static String letter(int number) {
    String last = String.valueOf(LETTERS.charAt(number % LETTERS.length()));
    return number < LETTERS.length() ? last : LETTERS.charAt(number / LETTERS.length() - 1) + last;
  }

  /** Its one or two brackets. */
  public List<Bracket> brackets() {
    return mirrored.isPresent() ? List.of(shown, mirrored.get()) : List.of(shown);
  }
}

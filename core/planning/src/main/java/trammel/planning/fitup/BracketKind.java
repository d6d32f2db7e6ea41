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
 * @param turnedOver true if the mirror image takes the same plates turned over, false if plates
 *     that are cut mirrored
 */
public record BracketKind(
    String letter, Bracket shown, Optional<Bracket> mirrored, boolean turnedOver) {
  /** Letters that are not taken for numbers. */
  private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

  /** The kinds among brackets, in their order. */
  public static List<BracketKind> of(List<Bracket> brackets) {
    List<BracketKind> kinds = new ArrayList<>();
    List<Bracket> left = new ArrayList<>(brackets);
    while (!left.isEmpty()) {
      Bracket shown = left.remove(0);
      Optional<Bracket> over = left.stream().filter(b -> shown.mirrors(b, true)).findFirst();
      Optional<Bracket> cut = left.stream().filter(b -> shown.mirrors(b, false)).findFirst();
      Optional<Bracket> mirrored = over.isPresent() ? over : cut;
      mirrored.ifPresent(left::remove);
      kinds.add(new BracketKind(letter(kinds.size()), shown, mirrored, over.isPresent()));
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

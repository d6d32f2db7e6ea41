package trammel.app.drawings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;

/**
 * Says in plain words what the shop calls bars, springs and shocks by: {@code shock-left} is the
 * left shock, {@code lower-right} the right lower bar.
 */
public final class PartWords {
  private static final List<String> SIDES = List.of("left", "right");

  private final List<Named> parts = new ArrayList<>();

  private record Named(Pattern name, String words) {}

  /** The words for the parts of a layout. */
  public PartWords(Layout layout) {
    for (Bar bar : layout.bars()) {
      add(bar.name(), " bar");
    }
    for (SpringUnit spring : layout.springs()) {
      add(spring.name(), " spring");
    }
    for (ShockUnit shock : layout.shocks()) {
      add(shock.name(), " shock");
    }
    // A name that begins like another is looked for before it.
    parts.sort(Comparator.comparingInt((Named part) -> part.name().pattern().length()).reversed());
  }

  private void add(String name, String kind) {
    String pattern = "(?<![\\w-])" + Pattern.quote(name) + "(?![\\w-])";
    parts.add(new Named(Pattern.compile(pattern), words(name, kind)));
  }

  private static String words(String name, String kind) {
    String side = "";
    String rest = name;
    for (String one : SIDES) {
      if (name.endsWith("-" + one)) {
        side = one + " ";
        rest = name.substring(0, name.length() - one.length() - 1);
      }
    }
    String plain = rest.replace('-', ' ');
    boolean said = plain.matches(".*\\b(bar|link|arm|spring|shock|coil-over)s?");
    return side + plain + (said ? "" : kind);
  }

  /** A text with every part in it called in plain words. */
  public String in(String text) {
    String plain = text;
    for (Named part : parts) {
      plain = part.name().matcher(plain).replaceAll(Matcher.quoteReplacement(part.words()));
    }
    return plain;
  }
}

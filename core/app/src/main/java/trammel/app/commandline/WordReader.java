package trammel.app.commandline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads the words after a command's name. Written out, not left to a library: the one tried before
 * took a fifth of the time of a whole quote to get ready for three options.
 */
final class WordReader {
  private static final String END_OF_OPTIONS = "--";

  private final Syntax syntax;
  private final List<String> words;
  private final List<String> plain = new ArrayList<>();
  private final Map<String, List<String>> optionValues = new HashMap<>();

  WordReader(Syntax syntax, List<String> words) {
    this.syntax = syntax;
    this.words = words;
  }

  Arguments read() {
    int next = 0;
    while (next < words.size() && !words.get(next).equals(END_OF_OPTIONS)) {
      next = take(next);
    }
    for (int i = next + 1; i < words.size(); i++) {
      plain.add(words.get(i));
    }
    return new Arguments(syntax, argumentValues(), optionValues);
  }

  /** Takes one word, or two if the second is the value of the first. Returns the next one. */
  private int take(int at) {
    String word = words.get(at);
    Optional<Option> known = optionOf(word);
    if (known.isEmpty()) {
      if (looksLikeOption(word)) {
        throw unknown(word);
      }
      plain.add(word);
      return at + 1;
    }
    Option option = known.get();
    boolean attached = word.length() > option.name().length();
    if (option.isFlag()) {
      if (attached) {
        throw new MisuseException(option.name() + " takes no value, but '" + word + "' is given.");
      }
      put(option, "");
      return at + 1;
    }
    if (attached) {
      put(option, word.substring(option.name().length() + 1));
      return at + 1;
    }
    if (at + 1 == words.size() || isTaken(words.get(at + 1))) {
      throw new MisuseException(
          option.name() + " needs a value: " + option.name() + " " + option.value() + ".");
    }
    put(option, words.get(at + 1));
    return at + 2;
  }

  /** The option that a word names, alone or with its value after an equals sign. */
  private Optional<Option> optionOf(String word) {
    int equals = word.indexOf('=');
    return syntax.findOption(equals < 0 ? word : word.substring(0, equals));
  }

  /** Whether a word has a meaning of its own and so is no value. */
  private boolean isTaken(String word) {
    return word.equals(END_OF_OPTIONS) || optionOf(word).isPresent();
  }

  private void put(Option option, String value) {
    List<String> values = optionValues.get(option.name());
    if (values == null) {
      values = new ArrayList<>();
      optionValues.put(option.name(), values);
    } else if (!option.repeatable()) {
      throw new MisuseException(option.name() + " is given twice; give it once.");
    }
    values.add(value);
  }

  /** A lone dash stands for standard input by custom, and -3 or -.5 is a number. */
  private static boolean looksLikeOption(String word) {
    if (word.length() < 2 || word.charAt(0) != '-') {
      return false;
    }
    char second = word.charAt(1);
    return second != '.' && (second < '0' || second > '9');
  }

  private MisuseException unknown(String word) {
    int equals = word.indexOf('=');
    String name = equals < 0 ? word : word.substring(0, equals);
    List<String> names = new ArrayList<>();
    for (Option known : syntax.options()) {
      names.add(known.name());
    }
    Optional<String> meant = Suggestion.closest(name, names);
    return new MisuseException(
        "There is no option '"
            + name
            + "'."
            + (meant.isPresent() ? " Did you mean '" + meant.get() + "'?" : ""));
  }

  /** Gives each argument its words, in order. */
  private Map<String, List<String>> argumentValues() {
    Map<String, List<String>> values = new HashMap<>();
    int used = 0;
    for (Argument argument : syntax.arguments()) {
      int count = Math.min(argument.most(), plain.size() - used);
      if (count < argument.least()) {
        throw new MisuseException(missing(argument, count));
      }
      values.put(argument.label(), List.copyOf(plain.subList(used, used + count)));
      used += count;
    }
    if (used < plain.size()) {
      throw new MisuseException("'" + plain.get(used) + "' is one word too many.");
    }
    return values;
  }

  private static String missing(Argument argument, int count) {
    String what = argument.label() + " is missing: " + argument.help();
    return argument.least() == 1
        ? what
        : what + " At least " + argument.least() + " are needed, " + count + " given.";
  }
}

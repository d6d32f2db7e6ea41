package trammel.app.commandline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the words after a command's name once, from left to right. */
final class WordReader {
  private final Syntax syntax;
  private final List<String> words;
  private final Map<String, List<String>> optionValues = new HashMap<>();
  private final List<String> plainWords = new ArrayList<>();
  private int next;

  WordReader(Syntax syntax, List<String> words) {
    this.syntax = syntax;
    this.words = words;
  }

  Arguments read() {
    while (next < words.size()) {
      String word = words.get(next++);
      if (word.equals("--")) {
        plainWords.addAll(words.subList(next, words.size()));
        break;
      }
      if (looksLikeOption(word)) {
        readOption(word);
      } else {
        plainWords.add(word);
      }
    }
    return new Arguments(syntax, argumentValues(), optionValues);
  }

  /** A lone dash stands for standard input by custom, and -3 or -.5 is a number. */
  private static boolean looksLikeOption(String word) {
    if (word.length() < 2 || word.charAt(0) != '-') {
      return false;
    }
    char second = word.charAt(1);
    return second != '.' && (second < '0' || second > '9');
  }

  private void readOption(String word) {
    int equals = word.indexOf('=');
    String name = equals < 0 ? word : word.substring(0, equals);
    Option option = find(name);
    List<String> values = valuesOf(name);
    if (!values.isEmpty() && !option.repeatable()) {
      throw new MisuseException(name + " is given twice; give it once.");
    }
    values.add(equals < 0 ? followingValue(option) : attachedValue(option, word, equals));
  }

  private List<String> valuesOf(String name) {
    List<String> values = optionValues.get(name);
    if (values == null) {
      values = new ArrayList<>(1);
      optionValues.put(name, values);
    }
    return values;
  }

  private Option find(String name) {
    Optional<Option> option = syntax.findOption(name);
    if (option.isPresent()) {
      return option.get();
    }
    List<String> names = new ArrayList<>();
    for (Option known : syntax.options()) {
      names.add(known.name());
    }
    Optional<String> meant = Suggestion.closest(name, names);
    throw new MisuseException(
        "There is no option '"
            + name
            + "'."
            + (meant.isPresent() ? " Did you mean '" + meant.get() + "'?" : ""));
  }

  private String followingValue(Option option) {
    if (option.isFlag()) {
      return "";
    }
    if (next == words.size() || looksLikeOption(words.get(next))) {
      throw new MisuseException(
          option.name() + " needs a value: " + option.name() + " " + option.value() + ".");
    }
    return words.get(next++);
  }

  private static String attachedValue(Option option, String word, int equals) {
    if (option.isFlag()) {
      throw new MisuseException(option.name() + " takes no value, but '" + word + "' is given.");
    }
    return word.substring(equals + 1);
  }

  /** Gives each argument its words, in order. */
  private Map<String, List<String>> argumentValues() {
    Map<String, List<String>> values = new HashMap<>();
    int used = 0;
    for (Argument argument : syntax.arguments()) {
      int count = Math.min(argument.most(), plainWords.size() - used);
      if (count < argument.least()) {
        throw new MisuseException(missing(argument, count));
      }
      values.put(argument.label(), List.copyOf(plainWords.subList(used, used + count)));
      used += count;
    }
    if (used < plainWords.size()) {
      throw new MisuseException("'" + plainWords.get(used) + "' is one word too many.");
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

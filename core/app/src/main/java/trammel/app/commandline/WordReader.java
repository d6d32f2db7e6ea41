package trammel.app.commandline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.IFactory;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/**
 * Reads the words after a command's name with picocli. The specification is built from the {@link
 * Syntax} and not from annotations: looking annotations up costs a short command half its time.
 */
final class WordReader {
  private static final String END_OF_OPTIONS = "--";

  /** Makes the lists that words are put in; picocli's own looks through every jar first. */
  private static final IFactory MAKER =
      new IFactory() {
        @Override
        public <K> K create(Class<K> wanted) {
          if (wanted != List.class) {
            throw new IllegalArgumentException("No option or argument is a " + wanted + ".");
          }
          return wanted.cast(new ArrayList<String>());
        }
      };

  private final Syntax syntax;
  private final List<String> words;

  WordReader(Syntax syntax, List<String> words) {
    this.syntax = syntax;
    this.words = words;
  }

  Arguments read() {
    int end = words.indexOf(END_OF_OPTIONS);
    List<String> first = end < 0 ? words : words.subList(0, end);
    ParseResult result = parse(first);
    List<String> plain = new ArrayList<>(result.matchedPositionalValue(0, List.<String>of()));
    for (String word : plain) {
      if (looksLikeOption(word)) {
        throw unknown(word);
      }
    }
    if (end >= 0) {
      plain.addAll(words.subList(end + 1, words.size()));
    }
    return new Arguments(syntax, argumentValues(plain), optionValues(result));
  }

  private ParseResult parse(List<String> first) {
    CommandLine line = new CommandLine(spec(syntax), MAKER);
    line.setExpandAtFiles(false);
    line.setUnmatchedOptionsArePositionalParams(true);
    try {
      return line.parseArgs(first.toArray(new String[0]));
    } catch (OverwrittenOptionException twice) {
      OptionSpec option = (OptionSpec) twice.getOverwritten();
      throw new MisuseException(option.longestName() + " is given twice; give it once.");
    } catch (MissingParameterException missing) {
      OptionSpec option = (OptionSpec) missing.getMissing().get(0);
      String given = option.longestName();
      throw new MisuseException(
          given + " needs a value: " + given + " " + option.paramLabel() + ".");
    } catch (ParameterException other) {
      throw refusal(other);
    }
  }

  private MisuseException refusal(ParameterException refused) {
    for (Option option : syntax.options()) {
      for (String word : words) {
        if (option.isFlag() && word.startsWith(option.name() + "=")) {
          return new MisuseException(
              option.name() + " takes no value, but '" + word + "' is given.");
        }
      }
    }
    return new MisuseException(refused.getMessage());
  }

  /** A syntax as picocli knows it. */
  static CommandSpec spec(Syntax syntax) {
    CommandSpec spec = CommandSpec.wrapWithoutInspection(null, MAKER);
    for (Option option : syntax.options()) {
      OptionSpec.Builder builder = OptionSpec.builder(option.name());
      if (option.isFlag()) {
        builder.type(boolean.class).arity("0");
      } else if (option.repeatable()) {
        builder.type(List.class).auxiliaryTypes(String.class).arity("1");
      } else {
        builder.type(String.class).arity("1");
      }
      spec.addOption(builder.paramLabel(option.value()).build());
    }
    spec.addPositional(
        PositionalParamSpec.builder()
            .type(List.class)
            .auxiliaryTypes(String.class)
            .index("0..*")
            .arity("0..*")
            .build());
    return spec;
  }

  private Map<String, List<String>> optionValues(ParseResult result) {
    Map<String, List<String>> values = new HashMap<>();
    for (Option option : syntax.options()) {
      if (result.hasMatchedOption(option.name())) {
        values.put(
            option.name(),
            option.isFlag() ? List.of("") : result.matchedOption(option.name()).stringValues());
      }
    }
    return values;
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
  private Map<String, List<String>> argumentValues(List<String> plain) {
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

package trammel.app.commands;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.Command;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Suggestion;
import trammel.app.commandline.Syntax;
import trammel.app.json.FigureJson;
import trammel.app.json.Json;
import trammel.app.text.FigureText;
import trammel.planning.figures.Figure;
import trammel.planning.figures.FigureAnswer;
import trammel.planning.figures.Figures;
import trammel.reading.quantity.UnitSystem;

/** Works out one bench figure, or lists them. */
public final class FigureCommand implements Command {
  private static final String WORDS = "NAME KEY=VALUE";
  private static final int MOST_WORDS = 60;

  @Override
  public Syntax syntax() {
    return CommonOptions.addTo(
        Syntax.of(
                "Works out one bench figure with its source. Without a name it lists the figures;"
                    + " with a name alone it says what goes in. Bare numbers take US shop units, or"
                    + " metric ones with --units metric.")
            .arguments(
                WORDS,
                0,
                MOST_WORDS,
                "The figure and its inputs, such as tube-weight outside=1.75 wall=0.120."));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    UnitSystem units = options.units().orElse(UnitSystem.US);
    List<String> words = arguments.arguments(WORDS);
    if (words.isEmpty()) {
      List<Figure> all = Figures.all();
      print(screen, options.json() ? Json.text(FigureJson.list(all)) : FigureText.list(all));
      return ExitCode.DONE;
    }
    Figure figure = figure(words.get(0));
    if (words.size() == 1 && !figure.needsNothing()) {
      print(
          screen,
          options.json()
              ? Json.text(FigureJson.inputs(figure, units))
              : FigureText.inputs(figure, units));
      return ExitCode.DONE;
    }
    Map<String, String> given = given(figure, words.subList(1, words.size()));
    List<FigureAnswer> answers = figure.answers(given, units);
    print(
        screen,
        options.json()
            ? Json.text(FigureJson.answers(figure, given, answers, units))
            : FigureText.answers(figure, given, answers, units));
    return ExitCode.DONE;
  }

  private static void print(Screen screen, String text) {
    screen.out().println(text.stripTrailing());
  }

  private static Figure figure(String name) {
    Optional<Figure> figure = Figures.find(name);
    if (figure.isPresent()) {
      return figure.get();
    }
    List<String> names = new ArrayList<>();
    for (Figure known : Figures.all()) {
      names.add(known.name());
    }
    Optional<String> meant = Suggestion.closest(name, names);
    throw CommandFailure.badInput(
        "There is no figure '"
            + name
            + "'."
            + (meant.isPresent() ? " Did you mean '" + meant.get() + "'?" : "")
            + "\n'trammel figure' lists them.");
  }

  private static Map<String, String> given(Figure figure, List<String> words) {
    Map<String, String> given = new LinkedHashMap<>();
    for (String word : words) {
      int equals = word.indexOf('=');
      if (equals < 1) {
        throw CommandFailure.badInput(
            "'"
                + word
                + "' is no input; write a key, = and its value, such as "
                + figure.example()
                + ".\n'trammel figure "
                + figure.name()
                + "' says what goes in. A value with a space goes in quotes: \"length=29 1/2"
                + " in\".");
      }
      String key = word.substring(0, equals).replace('-', '_');
      if (given.put(key, word.substring(equals + 1).strip()) != null) {
        throw CommandFailure.badInput("'" + key + "' is given twice; give it once.");
      }
    }
    return given;
  }
}

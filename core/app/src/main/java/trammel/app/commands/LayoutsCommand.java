package trammel.app.commands;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.Workbench;
import trammel.app.json.Json;
import trammel.app.text.OptionsText;
import trammel.planning.catalog.Catalog;
import trammel.planning.draft.Extensions;
import trammel.planning.extension.Addition;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.PluginFaultException;
import trammel.planning.extension.SpringMount;
import trammel.reading.fields.Field;
import trammel.reading.quantity.UnitSystem;

/** Lists the linkages, spring mounts and additions that are installed, with their options. */
public final class LayoutsCommand extends JobCommand {

  @Override
  public Syntax syntax() {
    return CommonOptions.addTo(
        Syntax.of(
            "Lists the linkages, spring mounts and additions that are installed, with their"
                + " options."));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    UnitSystem units = options.units().orElse(UnitSystem.US);
    Workbench bench = bench(options.units(), screen);
    Extensions installed = bench.extensions().extensions();
    List<String> leftOut = new ArrayList<>(bench.extensions().troubles());
    List<Entry> linkages = new ArrayList<>();
    for (AxleLinkage one : installed.linkages()) {
      add(linkages, leftOut, screen, () -> Entry.of(one, bench.catalog()));
    }
    List<Entry> springs = new ArrayList<>();
    for (SpringMount one : installed.springs()) {
      add(springs, leftOut, screen, () -> Entry.of(one, bench.catalog()));
    }
    List<Entry> additions = new ArrayList<>();
    for (Addition one : installed.additions()) {
      add(additions, leftOut, screen, () -> Entry.of(one, bench.catalog()));
    }
    if (options.json()) {
      Map<String, Object> json = new LinkedHashMap<>();
      json.put("linkages", json(linkages, units));
      json.put("springs", json(springs, units));
      json.put("additions", json(additions, units));
      json.put("left_out", leftOut);
      screen.out().println(Json.text(json));
      return ExitCode.DONE;
    }
    screen.out().print("LINKAGES, chosen.linkage in a job file\n");
    print(linkages, id -> "chosen.linkage_options", units, screen);
    screen.out().print("\nSPRINGS, chosen.spring in a job file\n");
    print(springs, id -> "chosen.spring_options", units, screen);
    if (!additions.isEmpty()) {
      screen.out().print("\nADDITIONS, any number under chosen.additions in a job file\n");
      print(additions, id -> "chosen.additions." + id, units, screen);
    }
    return ExitCode.DONE;
  }

  /** What an extension says of itself. */
  private record Entry(String id, String title, String summary, List<Field<?>> options) {
    static Entry of(AxleLinkage linkage, Catalog catalog) {
      return new Entry(linkage.id(), linkage.title(), linkage.summary(), linkage.options(catalog));
    }

    static Entry of(SpringMount spring, Catalog catalog) {
      return new Entry(spring.id(), spring.title(), spring.summary(), spring.options(catalog));
    }

    static Entry of(Addition addition, Catalog catalog) {
      return new Entry(
          addition.id(), addition.title(), addition.summary(), addition.options(catalog));
    }
  }

  /** One that fails is left out by name, and the rest go on. */
  private static void add(
      List<Entry> entries, List<String> leftOut, Screen screen, Supplier<Entry> asked) {
    try {
      entries.add(asked.get());
    } catch (PluginFaultException fault) {
      leftOut.add(fault.getMessage());
      screen.err().println("Left out: " + fault.getMessage());
    }
  }

  private static void print(
      List<Entry> entries, UnaryOperator<String> path, UnitSystem units, Screen screen) {
    OptionsText text = new OptionsText(units);
    for (Entry entry : entries) {
      screen.out().print(text.text(entry.id(), entry.title(), entry.summary()));
      screen.out().print(text.options(path.apply(entry.id()), entry.options()));
    }
  }

  private static List<Object> json(List<Entry> entries, UnitSystem units) {
    List<Object> all = new ArrayList<>();
    for (Entry entry : entries) {
      Map<String, Object> json = new LinkedHashMap<>();
      json.put("id", entry.id());
      json.put("title", entry.title());
      json.put("summary", entry.summary());
      List<Object> listed = new ArrayList<>();
      for (Field<?> option : entry.options()) {
        Map<String, Object> line = new LinkedHashMap<>();
        line.put("key", option.key());
        line.put("help", option.help());
        line.put("allowed", option.allowed(units));
        option.defaultText(units).ifPresent(value -> line.put("default", value));
        listed.add(line);
      }
      json.put("options", listed);
      all.add(json);
    }
    return all;
  }
}

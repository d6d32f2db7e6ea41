package trammel.app.commands;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.Workbench;
import trammel.app.json.Json;
import trammel.app.text.OptionsText;
import trammel.planning.draft.Extensions;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.SpringMount;
import trammel.reading.fields.Field;
import trammel.reading.quantity.UnitSystem;

/** Lists the linkages and spring mounts that are installed, with their options. */
public final class LayoutsCommand extends JobCommand {

  @Override
  public Syntax syntax() {
    return CommonOptions.addTo(
        Syntax.of("Lists the linkages and spring mounts that are installed, with their options."));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    UnitSystem units = options.units().orElse(UnitSystem.US);
    Workbench bench = bench(options.units(), screen);
    Extensions installed = bench.extensions().extensions();
    if (options.json()) {
      screen.out().println(Json.text(json(bench, installed, units)));
      return ExitCode.DONE;
    }
    OptionsText text = new OptionsText(units);
    screen.out().print("LINKAGES, chosen.linkage in a job file\n");
    for (AxleLinkage linkage : installed.linkages()) {
      screen.out().print(text.text(linkage.id(), linkage.title(), linkage.summary()));
      screen.out().print(text.options("chosen.linkage_options", linkage.options(bench.catalog())));
    }
    screen.out().print("\nSPRINGS, chosen.spring in a job file\n");
    for (SpringMount spring : installed.springs()) {
      screen.out().print(text.text(spring.id(), spring.title(), spring.summary()));
      screen.out().print(text.options("chosen.spring_options", spring.options(bench.catalog())));
    }
    return ExitCode.DONE;
  }

  private static Map<String, Object> json(Workbench bench, Extensions installed, UnitSystem units) {
    List<Object> linkages = new ArrayList<>();
    for (AxleLinkage linkage : installed.linkages()) {
      linkages.add(
          entry(
              linkage.id(),
              linkage.title(),
              linkage.summary(),
              linkage.options(bench.catalog()),
              units));
    }
    List<Object> springs = new ArrayList<>();
    for (SpringMount spring : installed.springs()) {
      springs.add(
          entry(
              spring.id(),
              spring.title(),
              spring.summary(),
              spring.options(bench.catalog()),
              units));
    }
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("linkages", linkages);
    json.put("springs", springs);
    json.put("left_out", bench.extensions().troubles());
    return json;
  }

  private static Map<String, Object> entry(
      String id, String title, String summary, List<Field<?>> options, UnitSystem units) {
    Map<String, Object> entry = new LinkedHashMap<>();
    entry.put("id", id);
    entry.put("title", title);
    entry.put("summary", summary);
    List<Object> listed = new ArrayList<>();
    for (Field<?> option : options) {
      Map<String, Object> line = new LinkedHashMap<>();
      line.put("key", option.key());
      line.put("help", option.help());
      line.put("allowed", option.allowed(units));
      option.defaultText(units).ifPresent(value -> line.put("default", value));
      listed.add(line);
    }
    entry.put("options", listed);
    return entry;
  }
}

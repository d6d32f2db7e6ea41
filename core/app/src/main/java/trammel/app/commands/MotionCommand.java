package trammel.app.commands;

import java.nio.file.Path;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.Command;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.json.Json;
import trammel.app.motionfile.MotionFile;
import trammel.app.motionfile.MotionFileReader;
import trammel.app.motionfile.MotionJson;
import trammel.app.motionfile.MotionStudy;
import trammel.app.text.MotionText;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.Problem;

/** Moves the axle of a bare linkage file through its poses. */
public final class MotionCommand implements Command {

  @Override
  public Syntax syntax() {
    return CommonOptions.addTo(
        Syntax.of(
                "Moves the axle of a bare linkage through heave and roll: limits of travel, figures"
                    + " at ride and every pose. The file is in mm and degrees, and so is what is"
                    + " printed without --units.")
            .argument(
                "FILE",
                "The linkage, JSON or YAML in the format "
                    + MotionFile.BARS_FORMAT
                    + ", or "
                    + MotionFile.BODIES_FORMAT
                    + " with rockers, slides, ball joints and bushes."));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    MotionFile file = MotionFileReader.read(Path.of(arguments.argument("FILE")));
    for (Problem remark : file.remarks()) {
      screen.err().println("Note: " + remark.text());
    }
    MotionStudy study = MotionStudy.of(file);
    if (options.json()) {
      screen.out().println(Json.text(MotionJson.of(file, study)));
    } else {
      UnitSystem units = options.units().orElse(UnitSystem.METRIC);
      screen.out().print(new MotionText(file, study, units).text());
    }
    return ExitCode.DONE;
  }
}

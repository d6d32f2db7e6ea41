package trammel.app.commands;

import java.nio.file.Files;
import java.nio.file.Path;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.CommandFailure;

/** The folder of a shop's jobs, beside which its ledger and its catalog lie. */
public final class ShopFolder {
  /** The option that names it. */
  public static final String OPTION = "--shop";

  private ShopFolder() {}

  /**
   * The folder that {@code --shop} names, absolute.
   *
   * @param otherwise the folder where the option is left out
   * @throws CommandFailure if it is no folder
   */
  public static Path of(Arguments arguments, Path otherwise) {
    Path folder = arguments.value(OPTION).map(Path::of).orElse(otherwise);
    if (!Files.isDirectory(folder.toAbsolutePath())) {
      throw CommandFailure.badInput(
          OPTION + " was given " + folder + ", which is no folder; give the folder of the jobs.");
    }
    return folder.toAbsolutePath().normalize();
  }
}

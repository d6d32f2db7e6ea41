package trammel.app.commands;

import java.util.Optional;
import trammel.app.commandline.Command;
import trammel.app.commandline.Screen;
import trammel.app.desk.EarlyReading;
import trammel.app.desk.Installation;
import trammel.app.desk.Workbench;
import trammel.reading.quantity.UnitSystem;

/** A command that works on jobs: it reads the installed copy while its words are read. */
public abstract class JobCommand implements Command {
  private EarlyReading reading;

  @Override
  public final void prepare() {
    reading = EarlyReading.start(Installation.running());
  }

  /** Uses a copy that is being read already. */
  public final void prepare(EarlyReading begun) {
    reading = begun;
  }

  /** The bench that its jobs are worked on. */
  protected final Workbench bench(Optional<UnitSystem> units, Screen screen) {
    return new Workbench(reading, units, screen);
  }
}

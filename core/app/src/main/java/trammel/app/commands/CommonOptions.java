package trammel.app.commands;

import java.io.PrintWriter;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The options that every command takes, and the writers that it prints to. */
public class CommonOptions {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = "--units",
      paramLabel = "us|metric",
      converter = DisplayUnitsConverter.class,
      description = "Print in US shop units or metric; without it, in the units of the job.")
  private DisplayUnits units;

  @Option(names = "--json", description = "Print for a machine: JSON, with the unit in every name.")
  private boolean json;

  /** The units asked for; empty where the job's own are to be used. */
  public Optional<DisplayUnits> units() {
    return Optional.ofNullable(units);
  }

  /** Whether the result is to be printed as JSON. */
  public boolean json() {
    return json;
  }

  /** Takes the result. */
  public PrintWriter out() {
    return command.commandLine().getOut();
  }

  /** Takes warnings and what went wrong. */
  public PrintWriter err() {
    return command.commandLine().getErr();
  }

  /** Whether the result may carry colours. */
  public boolean colour() {
    return !json && command.commandLine().getColorScheme().ansi().enabled();
  }
}

package trammel.app.commands;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.commandline.WaitingLine;
import trammel.engine.uncertainty.UncertaintyResult;
import trammel.engine.uncertainty.UncertaintyStudy;
import trammel.planning.draft.Draft;
import trammel.planning.draft.JobUncertainty;

/**
 * The options that ask how sure the checks are.
 *
 * @param wanted whether it is asked for
 * @param samples how many vehicles to try
 * @param seed the seed of the samples
 */
record UncertaintyOptions(boolean wanted, int samples, long seed) {
  private static final String UNCERTAINTY = "--uncertainty";
  private static final String SAMPLES = "--samples";
  private static final String SEED = "--seed";
  private static final int USUAL_SAMPLES = 2_000;
  private static final long USUAL_SEED = 1;

  static Syntax addTo(Syntax syntax) {
    return syntax
        .flag(
            UNCERTAINTY,
            "Also vary what is measured and made within its tolerance, and tell the chance that"
                + " each check fails and what to measure again.")
        .option(
            SAMPLES,
            "N",
            "How many vehicles to try, "
                + UncertaintyStudy.FEWEST_SAMPLES
                + " to "
                + UncertaintyStudy.MOST_SAMPLES
                + "; without it, "
                + USUAL_SAMPLES
                + ".")
        .option(SEED, "N", "A whole number; the same one gives the same answer. Without it, 1.");
  }

  static UncertaintyOptions of(Arguments arguments) {
    boolean wanted = arguments.has(UNCERTAINTY);
    if (!wanted && (arguments.has(SAMPLES) || arguments.has(SEED))) {
      throw CommandFailure.badInput(
          SAMPLES + " and " + SEED + " go with " + UNCERTAINTY + "; give that too.");
    }
    long samples =
        arguments
            .number(SAMPLES, UncertaintyStudy.FEWEST_SAMPLES, UncertaintyStudy.MOST_SAMPLES)
            .orElse((long) USUAL_SAMPLES);
    long seed = arguments.number(SEED, Long.MIN_VALUE, Long.MAX_VALUE).orElse((long) USUAL_SEED);
    return new UncertaintyOptions(wanted, (int) samples, seed);
  }

  /**
   * The chances of the checks; empty where they are not asked for.
   *
   * @param screen is told how far it is, where that is a terminal
   */
  Optional<UncertaintyResult> study(Draft draft, Screen screen) {
    if (!wanted) {
      return Optional.empty();
    }
    UncertaintyStudy study = new UncertaintyStudy(draft.judge(), JobUncertainty.figures(draft));
    AtomicInteger tried = new AtomicInteger();
    WaitingLine line =
        WaitingLine.on(screen, () -> "Trying vehicles, " + tried.get() + " of " + samples);
    try {
      return Optional.of(study.run(draft.layout(), samples, seed, tried::set));
    } finally {
      line.close();
    }
  }
}

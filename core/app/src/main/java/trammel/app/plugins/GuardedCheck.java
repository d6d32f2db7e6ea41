package trammel.app.plugins;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import trammel.engine.checks.Adjustment;
import trammel.engine.checks.Check;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Measure;
import trammel.engine.checks.Reading;
import trammel.planning.extension.LimitedCheck;

/**
 * A check that a plugin brings.
 *
 * @param code the plugin
 * @param check its check
 * @param id the check's short name
 * @param title what it checks
 * @param measure what kind of quantity its value is
 */
record GuardedCheck(PluginCode<?> code, Check check, String id, String title, Measure measure)
    implements Check {

  /** The checks that an extension brings, each behind its guard. */
  static <T> List<LimitedCheck> all(PluginCode<T> code, Function<T, List<LimitedCheck>> question) {
    List<LimitedCheck> guarded = new ArrayList<>();
    for (LimitedCheck one : code.askList("its checks", question)) {
      guarded.add(code.ask("its checks", extension -> guarded(code, one)));
    }
    return guarded;
  }

  private static LimitedCheck guarded(PluginCode<?> code, LimitedCheck limited) {
    Check check = limited.check();
    if (check == null || limited.limit() == null || check.measure() == null) {
      throw code.unusable("its checks", "one is without a check, a limit or a measure");
    }
    return new LimitedCheck(
        new GuardedCheck(code, check, check.id(), check.title(), check.measure()), limited.limit());
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    return code.ask("its check " + id, extension -> check.read(analysis));
  }

  @Override
  public Limit limit(Limit general, LayoutAnalysis analysis) {
    return code.ask("the limit of its check " + id, plugin -> check.limit(general, analysis));
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return code.askList("what its check " + id + " can change", x -> check.adjustments(analysis));
  }
}

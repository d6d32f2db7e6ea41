package trammel.planning.draft;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.brackets.UnworkableLayoutException;
import trammel.engine.checks.Detail;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Measure;
import trammel.engine.checks.Reading;
import trammel.engine.loads.LoadCase;
import trammel.engine.strength.FatigueCurve;
import trammel.planning.catalog.PlanCheck;

/**
 * The welds of the brackets in the order in which repeated loads damage them, each with its share
 * of the damage of all: which to look at first, never how many years. Each load case comes as often
 * in a year as the catalog says; the range of stress is taken from no load to the case.
 *
 * @param welds works out their stresses
 */
record WeldRanking(BracketWelds welds) implements CatalogCheck {
  private static final int SHOWN = 6;

  @Override
  public PlanCheck check() {
    return PlanCheck.WELD_RANKING;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    Map<String, Double> damage;
    try {
      damage = damage(analysis);
    } catch (UnworkableLayoutException impossible) {
      return new Reading.Unknown(impossible.reason());
    }
    double all = damage.values().stream().mapToDouble(Double::doubleValue).sum();
    if (!(all > 0)) {
      return new Reading.NotApplicable("no weld's range of stress passes the cut-off");
    }
    List<Map.Entry<String, Double>> ranked = new ArrayList<>(damage.entrySet());
    ranked.sort(Map.Entry.<String, Double>comparingByValue(Comparator.reverseOrder()));
    List<Detail> details = new ArrayList<>();
    for (Map.Entry<String, Double> one : ranked.subList(1, Math.min(SHOWN, ranked.size()))) {
      details.add(new Detail(one.getKey() + ":", Measure.SHARE, one.getValue() / all));
    }
    return new Reading.Value(ranked.get(0).getValue() / all, ranked.get(0).getKey(), details);
  }

  private Map<String, Double> damage(LayoutAnalysis analysis) {
    List<LoadCase> cases = analysis.barForces().cases();
    Map<String, Double> times = analysis.settings().timesAYear();
    Map<String, Double> damage = new LinkedHashMap<>();
    for (BracketWelds.WeldStress weld : welds.stresses(analysis)) {
      double sum = 0;
      for (int i = 0; i < cases.size(); i++) {
        double often = times.getOrDefault(cases.get(i).name(), 0.0);
        sum += FatigueCurve.FILLET_ROOT.damage(often, weld.throatMPa()[i]);
      }
      damage.put(weld.foot().name(), sum);
    }
    return damage;
  }
}

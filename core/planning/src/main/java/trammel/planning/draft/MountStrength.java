package trammel.planning.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.work.LoadedMember;
import trammel.engine.checks.Detail;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Measure;
import trammel.engine.checks.MountForces;
import trammel.engine.checks.Reading;
import trammel.planning.catalog.PlanCheck;

/**
 * Least safety factor on yield of what carries springs and shocks: crossmembers and their legs,
 * bridges, tabs, brackets on the axle, arms and gussets, each under the largest forces of what
 * stands on it, {@link MountForces}.
 */
final class MountStrength implements CatalogCheck {
  private final JobWork planning;

  MountStrength(JobWork planning) {
    this.planning = planning;
  }

  @Override
  public PlanCheck check() {
    return PlanCheck.MOUNTS;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    List<LoadedMember> members;
    try {
      members = planning.of(analysis.built()).members();
    } catch (UnworkableLayoutException cannot) {
      return new Reading.NotApplicable("what cannot be made carries nothing");
    }
    MountForces forces = analysis.mountForces();
    double least = Double.POSITIVE_INFINITY;
    LoadedMember weakest = null;
    for (LoadedMember member : members) {
      if (member.kind() != LoadedMember.Kind.STEEL) {
        continue;
      }
      double stressMPa = stressMPa(member, forces);
      if (stressMPa > 0 && member.bearsMPa() / stressMPa < least) {
        least = member.bearsMPa() / stressMPa;
        weakest = member;
      }
    }
    return weakest == null
        ? new Reading.NotApplicable("no mount is loaded")
        : new Reading.Value(least, weakest.name() + ", " + weakest.how(), details(weakest, forces));
  }

  static double stressMPa(LoadedMember member, MountForces forces) {
    double stressMPa = 0;
    for (Map.Entry<String, Double> load : member.stressPerN().entrySet()) {
      stressMPa += load.getValue() * forces.greatestN(load.getKey()).orElse(0);
    }
    return stressMPa;
  }

  private static List<Detail> details(LoadedMember member, MountForces forces) {
    List<Detail> details = new ArrayList<>();
    details.add(new Detail("stress", Measure.STRESS, stressMPa(member, forces)));
    details.add(new Detail("its steel yields at", Measure.STRESS, member.bearsMPa()));
    member.stressPerN().keySet().stream()
        .sorted()
        .forEach(
            unit -> {
              OptionalDouble forceN = forces.greatestN(unit);
              if (forceN.isPresent()) {
                details.add(
                    new Detail("under " + unit + " with", Measure.FORCE, forceN.getAsDouble()));
              }
            });
    return details;
  }

  @Override
  public String advice() {
    return "Choose a larger crossmember or thicker bracket_plate in spring_options, or set springs"
        + " and shocks nearer to the rails and to the axle tube.";
  }
}

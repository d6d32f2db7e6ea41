package trammel.planning.draft;

import java.util.ArrayList;
import java.util.List;
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
 * Largest stress on the throat of the welds that hold what carries springs and shocks, as a share
 * of what 70 ksi filler metal may bear (AISC 360 Table J2.5), each under the largest forces of what
 * stands on it, {@link MountForces}.
 */
final class MountWelds implements CatalogCheck {
  private final JobWork planning;

  MountWelds(JobWork planning) {
    this.planning = planning;
  }

  @Override
  public PlanCheck check() {
    return PlanCheck.MOUNT_WELDS;
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
    double most = 0;
    LoadedMember worst = null;
    for (LoadedMember member : members) {
      double share = MountStrength.stressMPa(member, forces) / member.bearsMPa();
      if (member.kind() == LoadedMember.Kind.WELD && share > most) {
        most = share;
        worst = member;
      }
    }
    return worst == null
        ? new Reading.NotApplicable("no weld of a mount is loaded")
        : new Reading.Value(most, worst.name() + ", " + worst.how(), details(worst, forces));
  }

  private static List<Detail> details(LoadedMember weld, MountForces forces) {
    List<Detail> details = new ArrayList<>();
    details.add(
        new Detail("stress on its throat", Measure.STRESS, MountStrength.stressMPa(weld, forces)));
    details.add(new Detail("it may bear", Measure.STRESS, weld.bearsMPa()));
    weld.stressPerN().keySet().stream()
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
    return "Choose thicker bracket_plate or a larger crossmember in spring_options, which take"
        + " larger fillets, or set springs and shocks nearer to the rails and to the axle tube.";
  }
}

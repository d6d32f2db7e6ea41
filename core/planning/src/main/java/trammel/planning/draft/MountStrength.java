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
 * What carries springs and shocks, each part under the largest forces of what stands on it, {@link
 * MountForces}: the least safety factor on yield of crossmembers and their legs, bridges, tabs,
 * brackets on the axle, arms and gussets; or the largest stress on the throat of the welds that
 * hold them, as a share of what 70 ksi filler metal may bear (AISC 360 Table J2.5).
 */
final class MountStrength implements CatalogCheck {
  private final PlanCheck check;
  private final LoadedMember.Kind kind;
  private final JobWork planning;

  private MountStrength(PlanCheck check, LoadedMember.Kind kind, JobWork planning) {
    this.check = check;
    this.kind = kind;
    this.planning = planning;
  }

  static MountStrength ofSteel(JobWork planning) {
    return new MountStrength(PlanCheck.MOUNTS, LoadedMember.Kind.STEEL, planning);
  }

  static MountStrength ofWelds(JobWork planning) {
    return new MountStrength(PlanCheck.MOUNT_WELDS, LoadedMember.Kind.WELD, planning);
  }

  @Override
  public PlanCheck check() {
    return check;
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
    LoadedMember weakest = null;
    for (LoadedMember member : members) {
      double share = stressMPa(member, forces) / member.bearsMPa();
      if (member.kind() == kind && share > most) {
        most = share;
        weakest = member;
      }
    }
    if (weakest == null) {
      return new Reading.NotApplicable("no mount is loaded");
    }
    return new Reading.Value(
        isSteel() ? 1 / most : most,
        weakest.name() + ", " + weakest.how(),
        details(weakest, forces));
  }

  private boolean isSteel() {
    return kind == LoadedMember.Kind.STEEL;
  }

  private static double stressMPa(LoadedMember member, MountForces forces) {
    double stressMPa = 0;
    for (Map.Entry<String, Double> load : member.stressPerN().entrySet()) {
      stressMPa += load.getValue() * forces.greatestN(load.getKey()).orElse(0);
    }
    return stressMPa;
  }

  private List<Detail> details(LoadedMember member, MountForces forces) {
    List<Detail> details = new ArrayList<>();
    details.add(
        new Detail(
            isSteel() ? "stress" : "stress on its throat",
            Measure.STRESS,
            stressMPa(member, forces)));
    details.add(
        new Detail(
            isSteel() ? "its steel yields at" : "it may bear", Measure.STRESS, member.bearsMPa()));
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

package trammel.brackets.work;

import java.util.ArrayList;
import java.util.List;
import trammel.trade.welding.WeldSeam;

/**
 * All that a layout asks for.
 *
 * @param parts bought parts
 * @param bolts bolts with nuts and washers
 * @param plates plates to cut
 * @param tubes tubes and sections to cut
 * @param welds welds to run
 * @param operations work to do
 * @param feet where the brackets of bars are welded on, for the check of their welds
 * @param closings stretches of channel rail that are closed, of which a job's plates are made once
 *     all its plans are together
 * @param members parts of mounts and what loads them, for the check of their strength
 * @param railMounts mounts on the sides of the rails, for the check of their twist
 * @param holds crossmembers that hold the rails against twist
 */
public record WorkPlan(
    List<PartNeed> parts,
    List<BoltNeed> bolts,
    List<PlateNeed> plates,
    List<TubeNeed> tubes,
    List<WeldSeam> welds,
    List<OperationNeed> operations,
    List<WeldedFoot> feet,
    List<RailClosing> closings,
    List<LoadedMember> members,
    List<RailMount> railMounts,
    List<CrossmemberHold> holds) {
  /** A plan that asks for nothing. */
  public static final WorkPlan NONE = new Builder().build();

  public WorkPlan {
    parts = List.copyOf(parts);
    bolts = List.copyOf(bolts);
    plates = List.copyOf(plates);
    tubes = List.copyOf(tubes);
    welds = List.copyOf(welds);
    operations = List.copyOf(operations);
    feet = List.copyOf(feet);
    closings = List.copyOf(closings);
    members = List.copyOf(members);
    railMounts = List.copyOf(railMounts);
    holds = List.copyOf(holds);
  }

  /** This plan followed by another. */
  public WorkPlan plus(WorkPlan other) {
    return new Builder().add(this).add(other).build();
  }

  /** The same with other bought parts. */
  public WorkPlan withParts(List<PartNeed> others) {
    return new WorkPlan(
        others,
        bolts,
        plates,
        tubes,
        welds,
        operations,
        feet,
        closings,
        members,
        railMounts,
        holds);
  }

  /** The same with other work. */
  public WorkPlan withOperations(List<OperationNeed> others) {
    return new WorkPlan(
        parts, bolts, plates, tubes, welds, others, feet, closings, members, railMounts, holds);
  }

  /** Collects a plan line by line. */
  public static final class Builder {
    private final List<PartNeed> parts = new ArrayList<>();
    private final List<BoltNeed> bolts = new ArrayList<>();
    private final List<PlateNeed> plates = new ArrayList<>();
    private final List<TubeNeed> tubes = new ArrayList<>();
    private final List<WeldSeam> welds = new ArrayList<>();
    private final List<OperationNeed> operations = new ArrayList<>();
    private final List<WeldedFoot> feet = new ArrayList<>();
    private final List<RailClosing> closings = new ArrayList<>();
    private final List<LoadedMember> members = new ArrayList<>();
    private final List<RailMount> railMounts = new ArrayList<>();
    private final List<CrossmemberHold> holds = new ArrayList<>();

    /** Adds every line of a plan. */
    public Builder add(WorkPlan plan) {
      parts.addAll(plan.parts);
      bolts.addAll(plan.bolts);
      plates.addAll(plan.plates);
      tubes.addAll(plan.tubes);
      welds.addAll(plan.welds);
      operations.addAll(plan.operations);
      feet.addAll(plan.feet);
      closings.addAll(plan.closings);
      members.addAll(plan.members);
      railMounts.addAll(plan.railMounts);
      holds.addAll(plan.holds);
      return this;
    }

    /** Adds something bought. */
    public Builder add(PartNeed part) {
      parts.add(part);
      return this;
    }

    /** Adds bolts. */
    public Builder add(BoltNeed bolt) {
      bolts.add(bolt);
      return this;
    }

    /** Adds a plate. */
    public Builder add(PlateNeed plate) {
      plates.add(plate);
      return this;
    }

    /** Adds a tube or section. */
    public Builder add(TubeNeed tube) {
      tubes.add(tube);
      return this;
    }

    /** Adds a weld. */
    public Builder add(WeldSeam weld) {
      welds.add(weld);
      return this;
    }

    /** Adds work. */
    public Builder add(OperationNeed operation) {
      operations.add(operation);
      return this;
    }

    /** Adds where a bracket is welded on. */
    public Builder add(WeldedFoot foot) {
      feet.add(foot);
      return this;
    }

    /** Asks for a stretch of rail to be closed. */
    public Builder add(RailClosing closing) {
      closings.add(closing);
      return this;
    }

    /** Adds a part of a mount that is to be judged. */
    public Builder add(LoadedMember member) {
      members.add(member);
      return this;
    }

    /** Adds a mount on the side of a rail. */
    public Builder add(RailMount mount) {
      railMounts.add(mount);
      return this;
    }

    /** Adds a crossmember that holds the rails against twist. */
    public Builder add(CrossmemberHold hold) {
      holds.add(hold);
      return this;
    }

    /** The plan as collected. */
    public WorkPlan build() {
      return new WorkPlan(
          parts,
          bolts,
          plates,
          tubes,
          welds,
          operations,
          feet,
          closings,
          members,
          railMounts,
          holds);
    }
  }
}

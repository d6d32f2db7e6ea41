package trammel.planning.extension.kit;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import trammel.assembly.Held;
import trammel.assembly.SeamRun;
import trammel.brackets.work.BoltNeed;
import trammel.brackets.work.Bolting;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.End;
import trammel.engine.layout.ShockUnit;
import trammel.engine.motion.BodyPose;
import trammel.trade.welding.WeldRun;
import trammel.trade.welding.WeldSeam;

/**
 * What a plan promises of every end of a bar and of a shock: it is bolted or pinned, the plates
 * that the bolt clamps are welded on, and fitting a bar's bracket is in the hours.
 */
final class MountPromises {
  /** A bolt goes through the middle of its joint (mm). */
  private static final double ON_AXIS_MM = 1;

  private final String plugin;
  private final WorkPlan plan;
  private final Set<String> plates = new HashSet<>();
  private final Set<String> welded = new HashSet<>();

  MountPromises(String plugin, WorkPlan plan) {
    this.plugin = plugin;
    this.plan = plan;
    for (PlateNeed need : plan.plates()) {
      for (Held held : need.places()) {
        plates.add(held.id(need.plate().name()));
      }
    }
    for (WeldSeam seam : plan.welds()) {
      for (WeldRun run : seam.runs()) {
        if (run instanceof SeamRun placed) {
          welded.addAll(placed.parts());
          welded.addAll(placed.onto());
        }
      }
    }
  }

  void verifyBars(List<Bar> bars) {
    for (Bar bar : bars) {
      for (End end : End.values()) {
        String what = words(end) + " end of " + bar.name();
        Bolting bolt = bolt(what, bar.point(end));
        String body = bar.at(end).body();
        // What is pinned to an arm or rocker has no foot of its own.
        if (body.equals(BodyPose.FRAME) || body.equals(BodyPose.AXLE)) {
          verifyWelded(what, bolt);
          Promise.kept(
              plan.feet().stream()
                  .anyMatch(foot -> foot.bars().contains(bar.name()) && foot.end() == end),
              lacks(
                  what, "foot: say where its bracket is welded on, so that its welds are judged"));
        }
        Promise.kept(
            plan.operations().stream()
                .flatMap(one -> one.fits().stream())
                .anyMatch(fit -> fit.bar().equals(bar.name()) && fit.end() == end),
            lacks(what, "operation that fits its bracket"));
      }
    }
  }

  void verifyShocks(List<ShockUnit> shocks) {
    for (ShockUnit shock : shocks) {
      for (End end : End.values()) {
        String what = words(end) + " end of " + shock.name();
        verifyWelded(what, bolt(what, shock.point(end)));
      }
    }
  }

  private static String words(End end) {
    return end == End.FRAME ? "frame" : "axle";
  }

  private String lacks(String what, String missing) {
    return "In the plan of " + plugin + " the " + what + " has no " + missing + ".";
  }

  private Bolting bolt(String what, Point3 joint) {
    for (BoltNeed need : plan.bolts()) {
      for (Bolting bolting : need.places()) {
        Point3 seen = bolting.held().place().own(joint);
        boolean within = seen.zMm() > -ON_AXIS_MM && seen.zMm() < need.gripMm() + ON_AXIS_MM;
        if (within && Math.hypot(seen.xMm(), seen.yMm()) < ON_AXIS_MM) {
          return bolting;
        }
      }
    }
    throw new AssertionError(lacks(what, "bolt or pin through its middle"));
  }

  private void verifyWelded(String what, Bolting bolt) {
    List<String> clamped = bolt.through().stream().filter(plates::contains).toList();
    Promise.kept(!clamped.isEmpty(), lacks(what, "bracket: its bolt clamps no plate"));
    for (String plate : clamped) {
      Promise.kept(
          welded.contains(plate), lacks(what, "seam that holds '" + plate + "' of its bracket"));
    }
  }
}

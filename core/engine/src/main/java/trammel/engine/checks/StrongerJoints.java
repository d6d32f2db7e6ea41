package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Joint;

/** Joints worth trying where one is too weak: the next stronger first, of like give first. */
final class StrongerJoints {
  private StrongerJoints() {}

  static List<Adjustment> toTry(LayoutAnalysis analysis) {
    Joint weakest = weakest(analysis.layout().bars());
    List<Joint> stronger = new ArrayList<>();
    for (Joint joint : analysis.settings().joints()) {
      if (weakest != null && joint.workingN() > weakest.workingN()) {
        stronger.add(joint);
      }
    }
    stronger.sort(
        (one, other) -> {
          int kind = Double.compare(unlike(one, weakest), unlike(other, weakest));
          return kind != 0 ? kind : Double.compare(one.workingN(), other.workingN());
        });
    List<Adjustment> adjustments = new ArrayList<>(stronger.size());
    for (Joint joint : stronger) {
      adjustments.add(new Adjustment.FitJoint(joint));
    }
    return adjustments;
  }

  /** 0 for a joint with the give and swivel of the one it replaces, 1 for another kind. */
  private static double unlike(Joint joint, Joint weakest) {
    double ratio = joint.radialStiffnessNPerMm() / weakest.radialStiffnessNPerMm();
    return ratio > 0.5 && ratio < 2 ? 0 : 1;
  }

  private static Joint weakest(List<Bar> bars) {
    Joint weakest = null;
    for (Bar bar : bars) {
      for (Joint joint : List.of(bar.frameJoint(), bar.axleJoint())) {
        if (weakest == null || joint.workingN() < weakest.workingN()) {
          weakest = joint;
        }
      }
    }
    return weakest;
  }
}

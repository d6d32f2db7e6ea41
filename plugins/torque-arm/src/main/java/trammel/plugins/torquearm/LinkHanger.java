package trammel.plugins.torquearm;

import static trammel.engine.quantity.Amount.length;

import trammel.brackets.bar.BarMaking;
import trammel.brackets.barend.CrossmemberTabs;
import trammel.brackets.mount.Crossmember;
import trammel.brackets.mount.MountStock;
import trammel.brackets.work.BracketBasis;
import trammel.brackets.work.WorkPlan;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Rails;
import trammel.engine.quantity.Phrase;

/**
 * What the drop link hangs from: a crossmember from rail to rail ahead of it, and a pair of tabs on
 * its rear face with the link's upper joint between them.
 *
 * @param link the drop link
 * @param stock what the crossmember is made of
 * @param basis what all is planned on
 */
record LinkHanger(BarMaking link, MountStock stock, BracketBasis basis) {

  private Crossmember crossmember() {
    Point3 joint = link.bar().frame();
    return new Crossmember(
        "torque arm crossmember",
        basis.rails(),
        stock,
        CrossmemberTabs.closeAheadMm(joint, link.frameSeat(), stock.section().widthMm()),
        joint.zMm());
  }

  /** The tabs on it with their weld, the joint's bolt and the foot. */
  WorkPlan tabs() {
    return new CrossmemberTabs(link, crossmember(), basis).plan();
  }

  /** The crossmember with its welds and all of its work. */
  WorkPlan carrier() {
    WorkPlan.Builder plan = new WorkPlan.Builder();
    crossmember()
        .addTo(plan, Phrase.of("carries the drop link of the torque arm{}", beyondTheTape()));
    Point3 joint = link.bar().frame();
    double offMm = Math.abs(crossmember().forwardMm() - joint.xMm());
    crossmember().addLoad(plan, link.bar().name(), joint.yMm(), offMm);
    return plan.build();
  }

  /** The rails are known from the axle to where the front mounts were measured. */
  private Phrase beyondTheTape() {
    Rails rails = basis.rails();
    return crossmember().forwardMm() > rails.frontMountsForwardMm()
        ? Phrase.of(
            "; it lies ahead of where the rails were measured ({} ahead of the"
                + " axle): measure between the rails there before the tube is cut",
            length(rails.frontMountsForwardMm()))
        : Phrase.NONE;
  }
}

package trammel.engine.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import trammel.engine.layout.Joint;
import trammel.engine.layout.Layout;

/** A joint that is too weak is answered with one that can be had and that is strong enough. */
class JointChangeTest {
  private static final JointRating RATING = new JointRating("joint-rating", "rating");
  private static final Layout LAYOUT = SampleLayout.good();
  private static final Joint FITTED = LAYOUT.bars().get(0).frameJoint();

  private static Joint of(String name, double ratingShare, double stiffnessShare) {
    return new Joint(
        name,
        stiffnessShare * FITTED.radialStiffnessNPerMm(),
        FITTED.misalignmentRad(),
        FITTED.boltDiameterMm(),
        FITTED.widthMm(),
        FITTED.barrelRadiusMm(),
        ratingShare * FITTED.staticRatingN());
  }

  private static double share(Layout layout) {
    Reading reading = RATING.read(new LayoutAnalysis(layout, SampleLayout.settings()));
    return assertInstanceOf(Reading.Value.class, reading).value();
  }

  private static CheckResult.Judged judged(double most, Joint... joints) {
    Limit limit = Limit.atMost(most, 1000, "for this test");
    AnalysisSettings settings = SampleLayout.settings().withJoints(List.of(joints));
    Judge judge = new Judge(List.of(RATING), Map.of(RATING.id(), limit), settings);
    return (CheckResult.Judged) judge.judge(LAYOUT).get(0);
  }

  @Test
  void theWeakestJointThatIsStrongEnoughIsOfferedAndMakesTheCheckGood() {
    double most = share(LAYOUT) / 2;

    Change change =
        judged(most, of("slightly stronger", 1.5, 1), of("far stronger", 9, 1), of("enough", 4, 1))
            .change()
            .orElseThrow();

    Adjustment.FitJoint fit = assertInstanceOf(Adjustment.FitJoint.class, change.adjustment());
    assertEquals("enough", fit.joint().name());
    assertTrue(share(change.adjustment().apply(LAYOUT, change.amount())) <= most);
  }

  @Test
  void aJointOfLikeGiveIsTriedBeforeAStiffOne() {
    Change change =
        judged(share(LAYOUT) / 2, of("stiff", 4, 8), of("alike", 6, 1)).change().orElseThrow();

    assertEquals("alike", ((Adjustment.FitJoint) change.adjustment()).joint().name());
  }

  @Test
  void whereNoneIsStrongEnoughNoneIsOffered() {
    assertTrue(judged(share(LAYOUT) / 2, of("slightly stronger", 1.5, 1)).change().isEmpty());
  }
}

package trammel.planning.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.reading.fields.Field;
import trammel.trade.steel.BentPlate;
import trammel.trade.steel.PlateBend;
import trammel.trade.tubes.BentBar;
import trammel.trade.tubes.Cope;
import trammel.trade.tubes.Mitre;

/** Bending plate and fitting tube. */
final class ShapingFigures implements FigureGroup {
  private static final int MOST_LEGS = 20;

  private static final Field<Double> THICKNESS =
      Shop.inches("thickness", "thickness of the plate", 0.01, 3.9);
  private static final Field<Double> RADIUS =
      Shop.inches("radius", "inside radius of the bend", 0, 39);
  private static final Field<Double> BEND =
      Shop.degrees("angle", "angle through which it is bent", 0.1, 170).withDefault(Math.PI / 2);
  private static final Field<Double> K_FACTOR =
      Field.number("k", "where the neutral line lies, as a share of the thickness", 0, 1)
          .withDefault(0.42);
  private static final Field<String> LEGS =
      Field.text("legs", "outside legs with commas between them, such as 3,2", 200).optional();
  private static final Field<Double> BRANCH =
      Shop.inches("branch", "outside diameter of the tube that is coped", 0.1, 19);
  private static final Field<Double> HEADER =
      Shop.inches("header", "outside diameter of what it meets", 0.1, 19);
  private static final Field<Double> JOINT_ANGLE =
      Shop.degrees("angle", "angle between the two", 15, 90).withDefault(Math.PI / 2);
  private static final Field<Double> OFFSET =
      Shop.inches("offset", "distance between their axes", -10, 10).withDefault(0.0);
  private static final Field<Double> AT =
      Shop.degrees("at", "angle round the branch at which the edge is wanted", -360, 360)
          .withDefault(0.0);
  private static final Field<Double> OUTSIDE =
      Shop.inches("outside", "outside diameter of the tube", 0.1, 19);
  private static final Field<Double> CUT =
      Shop.degrees("angle", "angle of the cut from square; half the turn of the corner", 0.5, 60);
  private static final Field<Double> CENTRES =
      Shop.inches("centres", "centre distance of the bar's ends", 1, 100);
  private static final Field<Double> CLEARANCE =
      Shop.inches("offset", "offset of the bend from a line between the ends", 0.05, 50);
  private static final Field<Double> BEND_RADIUS =
      Shop.inches("radius", "centre-line radius of the bend", 0.1, 50);

  @Override
  public String title() {
    return "Shaping: bends, copes, mitres";
  }

  @Override
  public List<Figure> figures() {
    return List.of(
        Figure.draft(this, "bend-allowance", "Bend allowance and flat length of plate")
            .takes(THICKNESS, RADIUS, BEND, K_FACTOR, LEGS)
            .gives("allowance", "bend allowance", FigureUnit.LENGTH)
            .gives("setback", "outside setback", FigureUnit.LENGTH)
            .gives("deduction", "bend deduction", FigureUnit.LENGTH)
            .gives("flat", "flat length of the legs given", FigureUnit.LENGTH)
            .by(
                "angle (R + K T); (R + T) tan of half the angle; twice that less the allowance",
                "FAA-H-8083-31 ch. 4; K values attributed to Machinery's Handbook, 26th edition",
                "thickness=3/16 radius=3/16 legs=3,2"),
        Figure.draft(this, "cope", "Cope of a tube on a tube")
            .takes(BRANCH, HEADER, JOINT_ANGLE, OFFSET, AT)
            .gives("edge", "edge from the crossing of the axes, at that angle", FigureUnit.LENGTH)
            .gives("depth", "depth of the cope", FigureUnit.LENGTH)
            .gives("edge_length", "length of the edge", FigureUnit.LENGTH)
            .gives("weld_short_rule", "weld length by the short rule", FigureUnit.LENGTH)
            .gives("weld_tubular_rule", "weld length by the tubular rule", FigureUnit.LENGTH)
            .by(
                "z = [root of (R2 - (r sin f + e)2) - r cos f cos t] / sin t",
                "geometry, closed form; weld lengths AWS D1.1 tubular clause, from memory",
                "branch=1.5 header=1.75"),
        Figure.draft(this, "mitre", "Mitre of round tube")
            .takes(OUTSIDE, CUT)
            .gives("height", "height of the unwrapped edge", FigureUnit.LENGTH)
            .by(
                "outside diameter x tangent of the cut",
                "plane section of a cylinder, closed form",
                "outside=1.75 angle=22.5"),
        Figure.draft(this, "bent-bar", "Tube needed for a bar with one bend")
            .takes(CENTRES, CLEARANCE, BEND_RADIUS)
            .gives("developed", "length before bending", FigureUnit.LENGTH)
            .gives("bend", "angle of the bend", FigureUnit.ANGLE)
            .by(
                "two straight legs and an arc along the centre line",
                "geometry, closed form",
                "centres=36 offset=2 radius=6"));
  }

  @Override
  public void work(String name, FigureInputs given, FigureAnswers answers) {
    switch (name) {
      case "bend-allowance" -> bend(given, answers);
      case "cope" -> cope(given, answers);
      case "mitre" ->
          answers.put("height", new Mitre(given.get(OUTSIDE), given.get(CUT)).heightMm());
      case "bent-bar" -> {
        BentBar bar =
            BentBar.arched(given.get(CENTRES), given.get(CLEARANCE), given.get(BEND_RADIUS));
        answers
            .put("developed", bar.developedLengthMm())
            .put("bend", Math.abs(bar.bends().get(0).angleRad()));
      }
      default -> throw FigureGroup.unknown(name);
    }
  }

  private static void bend(FigureInputs given, FigureAnswers answers) {
    PlateBend bend =
        new PlateBend(
            given.get(THICKNESS), given.get(RADIUS), given.get(K_FACTOR), given.get(BEND));
    answers
        .put("allowance", bend.allowanceMm())
        .put("setback", bend.outsideSetbackMm())
        .put("deduction", bend.deductionMm());
    Optional<String> written = given.find(LEGS);
    if (written.isPresent()) {
      List<Double> legs = WrittenLists.lengthsMm("legs", written.get(), given.units());
      if (legs.size() < 2 || legs.size() > MOST_LEGS) {
        throw new IllegalArgumentException(
            "legs: given "
                + legs.size()
                + "; allowed: 2 to "
                + MOST_LEGS
                + ", one more than there are bends. Write them like 3,2.");
      }
      List<PlateBend> bends = new ArrayList<>();
      for (int i = 1; i < legs.size(); i++) {
        bends.add(bend);
      }
      answers.put("flat", new BentPlate(legs, bends).flatLengthMm());
    }
  }

  private static void cope(FigureInputs given, FigureAnswers answers) {
    Cope cope =
        new Cope(
            given.get(BRANCH) / 2,
            given.get(HEADER) / 2,
            given.get(JOINT_ANGLE),
            given.get(OFFSET));
    answers
        .put("edge", cope.edgeMm(given.get(AT)))
        .put("depth", cope.depthMm())
        .put("edge_length", cope.edgeLengthMm())
        .put("weld_short_rule", cope.shortRuleWeldMm())
        .put("weld_tubular_rule", cope.tubularRuleWeldMm());
  }
}

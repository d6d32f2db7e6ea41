package trammel.planning.figures;

import java.util.List;
import java.util.Locale;
import trammel.engine.strength.Bolt;
import trammel.engine.strength.BoltGrade;
import trammel.engine.strength.UnifiedThread;
import trammel.reading.fields.Field;
import trammel.trade.hardware.BoltedJoint;
import trammel.trade.hardware.ScrewThread;
import trammel.trade.hardware.ThreadSeries;

/** Bolts and threads. */
final class BoltFigures implements FigureGroup {
  private static final Field<String> THREAD =
      Field.text("thread", "thread: inches and threads an inch, such as 1/2-20", 20);
  private static final Field<String> GRADE =
      Field.choice("grade", "bolt grade", List.of("5", "8")).withDefault("8");
  private static final Field<Integer> PLANES =
      Field.count("planes", "shear planes: 2 in a clevis", 1, 10).withDefault(2);
  private static final Field<Double> PROOF_SHARE =
      Field.percent("proof_share", "share of the proof load to tighten to", 0.01, 1)
          .withDefault(Bolt.REUSABLE_PRELOAD_SHARE);
  private static final Field<Double> NUT_FACTOR =
      Field.number("nut_factor", "nut factor: 0.2 dry, about 0.15 oiled", 0.05, 0.5)
          .withDefault(Bolt.DRY_NUT_FACTOR);
  private static final Field<Double> PITCH_DIAMETER =
      Shop.inches("pitch_diameter", "least pitch diameter of the bolt", 0.02, 5).optional();
  private static final Field<Double> MINOR_DIAMETER =
      Shop.inches("minor_diameter", "largest minor diameter of the nut", 0.02, 5).optional();
  private static final Field<Double> DRILL = Shop.inches("drill", "drill diameter", 0.02, 5);
  private static final Field<Double> LOAD = Shop.poundsForce("load", "load across", 0, 1_000_000);
  private static final Field<Double> DIAMETER =
      Shop.inches("diameter", "diameter of the pin or bolt", 0.25, 1.5);
  private static final Field<Double> GRIP =
      Shop.inches("grip", "plates, sleeve and spacers under the head", 0.02, 30);
  private static final Field<Integer> WASHERS =
      Field.count("washers", "washers, head and nut together", 0, 10).withDefault(2);
  private static final Field<Double> WASHER =
      Shop.inches("washer", "thickness of a washer", 0.01, 1);
  private static final Field<Double> NUT = Shop.inches("nut", "height of the nut", 0.02, 4);

  @Override
  public String title() {
    return "Bolts and threads";
  }

  @Override
  public List<Figure> figures() {
    return List.of(
        Figure.draft(this, "bolt-strength", "Strength of a graded bolt")
            .takes(THREAD, GRADE, PLANES)
            .gives("series", "series of the thread", FigureUnit.WORD)
            .gives("stress_area", "stress area", FigureUnit.AREA)
            .gives("proof_load", "proof load", FigureUnit.FORCE)
            .gives("tensile_load", "breaking load in tension", FigureUnit.FORCE)
            .gives("shear_shank", "shearing load, shank in the planes", FigureUnit.FORCE)
            .gives("shear_thread", "shearing load, thread in the planes", FigureUnit.FORCE)
            .gives("allowed_shank", "allowed in shear, shank in the planes", FigureUnit.FORCE)
            .gives("allowed_thread", "allowed in shear, thread in the planes", FigureUnit.FORCE)
            .by(
                "At = 0.7854 (D - 0.9743/n)2; shear 0.6 Su; allowed 0.563 and 0.450 Su of the body,"
                    + " over 2",
                "SAE J429; Unified thread tables; AISC 360-10 Table J3.2",
                "thread=1/2-20 grade=8"),
        Figure.draft(this, "bolt-torque", "Tightening torque of a graded bolt")
            .takes(THREAD, GRADE, PROOF_SHARE, NUT_FACTOR)
            .gives("preload", "preload", FigureUnit.FORCE)
            .gives("torque", "torque", FigureUnit.TORQUE)
            .by(
                "F = share x At x proof strength; T = K D F",
                "Wentzell, Machine Design, ch. 6; Shigley, from memory for the share of 75 %",
                "thread=5/8-18 grade=8"),
        Figure.draft(this, "pin-shear", "Shear stress in a pin")
            .takes(DIAMETER, LOAD, PLANES)
            .gives("stress", "shear stress", FigureUnit.STRESS)
            .by(
                "load / (planes x pi D2/4)",
                "Wentzell, Machine Design, ch. 3",
                "diameter=1/2 load=20000"),
        Figure.draft(this, "thread-engagement", "Engagement of a thread")
            .takes(THREAD, PITCH_DIAMETER, MINOR_DIAMETER)
            .gives("series", "series of the thread", FigureUnit.WORD)
            .gives("in_steel", "by rule, in steel", FigureUnit.LENGTH)
            .gives("in_soft_metal", "by rule, in aluminium and other soft metal", FigureUnit.LENGTH)
            .gives("full_strength", "for full strength in equal steel", FigureUnit.LENGTH)
            .by(
                "1 D and 1.5 D; full strength 2 At/{pi Kn [0.5 + 0.57735 n (Es - Kn)]} when both"
                    + " diameters are given",
                "common practice, no source; FED-STD-H28/2B",
                "thread=1/2-20 pitch_diameter=0.4619 minor_diameter=0.457"),
        Figure.draft(this, "tap-drill", "Height of thread that a drilled hole leaves")
            .takes(THREAD, DRILL)
            .gives("thread_height", "height of thread", FigureUnit.PERCENT)
            .gives("says", "that is", FigureUnit.WORD)
            .gives("series", "series of the thread", FigureUnit.WORD)
            .by(
                "(D - drill) n/0.01299 per cent",
                "Machinery's Handbook",
                "thread=1/2-13 drill=27/64"),
        Figure.draft(this, "bolt-length", "Length of a bolt from what it clamps")
            .takes(THREAD, GRIP, NUT, WASHER, WASHERS)
            .gives("length", "least length under the head", FigureUnit.LENGTH)
            .by(
                "grip + washers + nut + two threads",
                "common practice, no source",
                "thread=1/2-20 grip=2.375 nut=7/16 washer=0.1"));
  }

  @Override
  public void work(String name, FigureInputs given, FigureAnswers answers) {
    switch (name) {
      case "bolt-strength" -> strength(given, answers);
      case "bolt-torque" -> {
        Bolt bolt = bolt(given);
        double share = given.get(PROOF_SHARE);
        answers
            .put("preload", bolt.preloadN(share))
            .put("torque", bolt.tighteningTorqueNmm(share, given.get(NUT_FACTOR)));
      }
      case "pin-shear" -> pin(given, answers);
      case "thread-engagement" -> engagement(given, answers);
      case "tap-drill" -> tapDrill(given, answers);
      case "bolt-length" ->
          answers.put(
              "length",
              new BoltedJoint(
                      ScrewThread.of(given.get(THREAD)),
                      given.get(GRIP),
                      given.get(WASHERS),
                      given.get(WASHER),
                      given.get(NUT))
                  .neededLengthMm());
      default -> throw FigureGroup.unknown(name);
    }
  }

  private static String series(FigureInputs given) {
    ScrewThread thread = ScrewThread.of(given.get(THREAD));
    return ThreadSeries.of(thread)
        .orElse("none that is standard: its pitch is in no table, read the thread again");
  }

  private static void tapDrill(FigureInputs given, FigureAnswers answers) {
    double share = thread(given).threadPercent(given.get(DRILL)) / 100;
    answers.put("thread_height", share).put("says", height(share)).put("series", series(given));
  }

  /** Usual tap charts go by 60 to 75 per cent: Machinery's Handbook. */
  private static String height(double share) {
    if (share > 1) {
      return "more than there is: the hole is smaller than the thread's root, and the tap breaks";
    }
    if (share > 0.85) {
      return "more than a tap likes to cut; a larger drill gives a thread as strong";
    }
    return share < 0.5 ? "under half: the thread strips early" : "usual";
  }

  private static UnifiedThread thread(FigureInputs given) {
    ScrewThread thread = ScrewThread.of(given.get(THREAD));
    return new UnifiedThread(thread.diameterMm(), thread.pitchMm());
  }

  private static Bolt bolt(FigureInputs given) {
    if (given.get(THREAD).strip().toLowerCase(Locale.ROOT).startsWith("m")) {
      throw new IllegalArgumentException(
          "thread: given '"
              + given.get(THREAD)
              + "'; allowed: an inch thread from 1/4 to 1-1/2, because grades 5 and 8 are defined"
              + " for those. Write it like 1/2-20.");
    }
    return new Bolt(
        thread(given), given.get(GRADE).equals("5") ? BoltGrade.GRADE_5 : BoltGrade.GRADE_8);
  }

  private static void strength(FigureInputs given, FigureAnswers answers) {
    Bolt bolt = bolt(given);
    int planes = given.get(PLANES);
    answers
        .put("series", series(given))
        .put("stress_area", bolt.thread().stressAreaMm2())
        .put("proof_load", bolt.proofLoadN())
        .put("tensile_load", bolt.tensileLoadN())
        .put("shear_shank", bolt.shearStrengthN(planes, Bolt.ShearPlane.SHANK))
        .put("shear_thread", bolt.shearStrengthN(planes, Bolt.ShearPlane.THREAD))
        .put("allowed_shank", bolt.allowableShearN(planes, Bolt.ShearPlane.SHANK))
        .put("allowed_thread", bolt.allowableShearN(planes, Bolt.ShearPlane.THREAD));
  }

  private static void pin(FigureInputs given, FigureAnswers answers) {
    double diameterMm = given.get(DIAMETER);
    // Any thread will do: with the shank in the planes it plays no part.
    Bolt pin = new Bolt(new UnifiedThread(diameterMm, diameterMm / 8), BoltGrade.GRADE_5);
    answers.put(
        "stress", pin.shearStressMPa(given.get(LOAD), given.get(PLANES), Bolt.ShearPlane.SHANK));
  }

  private static void engagement(FigureInputs given, FigureAnswers answers) {
    UnifiedThread thread = thread(given);
    answers
        .put("series", series(given))
        .put("in_steel", thread.leastEngagementMm(true))
        .put("in_soft_metal", thread.leastEngagementMm(false));
    boolean both = given.find(PITCH_DIAMETER).isPresent() && given.find(MINOR_DIAMETER).isPresent();
    if (both) {
      answers.put(
          "full_strength",
          thread.fullStrengthEngagementMm(given.get(PITCH_DIAMETER), given.get(MINOR_DIAMETER)));
    }
  }
}

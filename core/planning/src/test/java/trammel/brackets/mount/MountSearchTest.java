package trammel.brackets.mount;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trammel.brackets.UnworkableLayoutException;
import trammel.engine.clearance.Body;
import trammel.engine.clearance.Box;
import trammel.engine.clearance.Capsule;
import trammel.engine.clearance.Carrier;
import trammel.engine.clearance.Cylinder;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Travel;
import trammel.planning.extension.kit.SampleVehicle;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

/**
 * The search keeps what it found of a place. It must choose the place that looking at each of them
 * afresh, in the order of preference, chooses: what is kept must not change what is found.
 */
class MountSearchTest {
  private static final double STEP_MM = 12.7;
  private static final double REACH_MM = 8 * 25.4;
  private static final double INCH_MM = 25.4;

  /** A leaning can on a post, which is all that a search knows of a shock. */
  private static final class Can implements MountSearch.Drawing<Cylinder> {
    private final double upMm;
    private final double lengthMm;
    private final double leanMm;
    private final double radiusMm;
    private final double carrierMm;
    private int drawn;

    Can(Draw draw, Chassis chassis) {
      upMm = chassis.axleCentre().zMm() - draw.between(0, 80);
      lengthMm = draw.between(280, 460);
      leanMm = draw.between(0, 110);
      radiusMm = draw.between(15, 45);
      carrierMm = draw.between(20, 60);
    }

    @Override
    public Cylinder at(double forwardMm, double leftMm) {
      drawn++;
      return new Cylinder(
          new Point3(forwardMm, leftMm - leanMm, upMm + lengthMm),
          new Point3(forwardMm, leftMm, upMm),
          radiusMm);
    }

    @Override
    public Cylinder envelope(Cylinder can) {
      return can;
    }

    @Override
    public Capsule bracket(Cylinder can) {
      return new Capsule(new Point3(0, can.to().yMm(), upMm + 20), can.to(), radiusMm / 2);
    }

    @Override
    public Optional<Capsule> leaning(Cylinder can) {
      return Optional.of(bracket(can));
    }

    @Override
    public Capsule plates(Cylinder can) {
      return new Capsule(bracket(can).from(), can.to(), radiusMm / 2 + 10);
    }

    @Override
    public Optional<TightSpot> atTop(Cylinder can) {
      double toTwinMm = 2 * (can.from().yMm() - radiusMm);
      return toTwinMm < 25 ? Optional.of(new TightSpot("twin", toTwinMm, 25)) : Optional.empty();
    }

    /** A tube between the rails past its top, on legs of a thickness that differs. */
    @Override
    public List<Box> carrier(Cylinder can, Legs legs) {
      double x = can.from().xMm() + (can.from().xMm() < 0 ? -1 : 1) * (radiusMm + 40);
      double halfMm = legs == Legs.TUBE ? 3 * carrierMm : carrierMm / 4;
      double z = can.from().zMm();
      return List.of(Box.between(x - halfMm, x + halfMm, -350, 350, z - 25, z + 25));
    }
  }

  private record Case(
      Chassis chassis, AxleGuide guide, AxleTravel travel, Side side, double closestMm, Can can) {
    static Case of(Draw draw) {
      Chassis chassis =
          SampleVehicle.withRailsMoved(
                  SampleVehicle.pickup(),
                  draw.between(-2 * INCH_MM, 5 * INCH_MM),
                  draw.between(-INCH_MM, 2 * INCH_MM))
              .withTravel(new Travel(draw.between(50, 100), draw.between(50, 100)));
      AxleGuide guide = AxleGuide.of(SampleVehicle.bars(chassis));
      return new Case(
          chassis,
          guide,
          new AxleTravel(chassis, guide),
          draw.oneOf(Side.class),
          draw.between(60, 140),
          new Can(draw, chassis));
    }

    MountRoom room() {
      return new MountRoom(chassis, guide, travel);
    }

    List<Double> alongMm() {
      List<Double> alongMm = new ArrayList<>();
      for (double leftMm = 600; leftMm > 100; leftMm -= 25) {
        alongMm.add(leftMm);
      }
      return alongMm;
    }

    Cylinder found(MountSearch<Cylinder> search, Beside beside) {
      return search.find(closestMm, OptionalDouble.empty(), alongMm(), can, beside);
    }

    /** Each place looked at with a room that was asked nothing before. */
    Optional<Cylinder> firstOfAll(Beside beside) {
      for (double offsetMm = closestMm; offsetMm <= closestMm + REACH_MM; offsetMm += STEP_MM) {
        for (double leftMm : alongMm()) {
          Cylinder drawn = can.at(side.forwardMm(offsetMm), leftMm);
          if (hasRoom(drawn, beside)) {
            return Optional.of(drawn);
          }
        }
      }
      return Optional.empty();
    }

    private boolean hasRoom(Cylinder drawn, Beside beside) {
      MountRoom room = room();
      MountRoom others = room().beside(beside.bodies());
      List<Box> carrier = can.carrier(drawn, beside.legs());
      Capsule bracket = can.bracket(drawn);
      boolean free =
          can.atTop(drawn).isEmpty()
              && room.tight(drawn).isEmpty()
              && room.tightBracket(bracket).isEmpty()
              && others.tight(drawn).isEmpty()
              && others.tightBracket(bracket).isEmpty();
      boolean clear =
          others.isClearOfBrackets(drawn, bracket)
              && room.isClearOfAxleBrackets(bracket)
              && room.isClearOfBars(can.plates(drawn))
              && room.isFreeOnFrame(carrier)
              && others.isFreeOnFrame(carrier);
      return free && (clear || !beside.clearOfBrackets());
    }
  }

  private static Beside beside(Draw draw) {
    List<Body> bodies =
        draw.listOf(
            0,
            2,
            one -> {
              Point3 low =
                  new Point3(one.between(-250, 250), one.between(150, 600), one.between(300, 500));
              return new Body(
                  "other " + one.anyLong(),
                  new Capsule(low, low.plus(new Point3(0, 0, 0).to(new Point3(0, 0, 200))), 50),
                  one.oneOf(Carrier.FRAME, Carrier.AXLE, Carrier.LINK));
            });
    return new Beside(bodies, draw.withChance(0.7), draw.oneOf(Legs.class));
  }

  @Seeds(40)
  void theSearchChoosesWhatLookingAtEveryPlaceAfreshChooses(Draw draw) {
    Case one = Case.of(draw);
    MountSearch<Cylinder> search = new MountSearch<>("can", one.side(), one.room());
    for (int asked = 0; asked < 4; asked++) {
      Beside beside = beside(draw);
      Optional<Cylinder> expected = one.firstOfAll(beside);
      if (expected.isPresent()) {
        assertEquals(expected.get(), one.found(search, beside));
      } else {
        assertThrows(UnworkableLayoutException.class, () -> one.found(search, beside));
      }
    }
  }

  /** The effort, by count: no place is drawn twice, and a refusal that nobody reads draws none. */
  @Test
  void aPlaceIsDrawnOnceHoweverOftenItIsAskedFor() {
    Case one = Case.of(new Draw(1));
    MountSearch<Cylinder> search = new MountSearch<>("can", one.side(), one.room());
    Cylinder everywhere = new Cylinder(new Point3(-2000, 0, 400), new Point3(2000, 0, 400), 1500);
    Beside blocked =
        new Beside(List.of(new Body("wall", everywhere, Carrier.FRAME)), false, Legs.TUBE);
    int places = one.alongMm().size() * (1 + (int) (REACH_MM / STEP_MM));
    for (int asked = 0; asked < 5; asked++) {
      assertThrows(UnworkableLayoutException.class, () -> one.found(search, blocked));
    }
    assertEquals(places, one.can().drawn);
    UnworkableLayoutException refusal =
        assertThrows(UnworkableLayoutException.class, () -> one.found(search, blocked));
    assertTrue(refusal.getMessage().contains("no room for the can"), refusal.getMessage());
    assertTrue(one.can().drawn > places, "the reason is found when it is read");
  }

  /** With nothing in its way a search ends at the first place. */
  @Test
  void aSearchEndsAtTheFirstPlaceWithRoom() {
    Beside nothing = new Beside(List.of(), false, Legs.TUBE);
    long seed = 1;
    while (Case.of(new Draw(seed)).firstOfAll(nothing).isEmpty()) {
      seed++;
      assertTrue(seed < 40, "of forty drawn vehicles none has room");
    }
    Case one = Case.of(new Draw(seed));
    MountSearch<Cylinder> search = new MountSearch<>("can", one.side(), one.room());
    Cylinder found = one.found(search, nothing);
    int drawn = one.can().drawn;
    int row = (int) Math.round((Math.abs(found.to().xMm()) - one.closestMm()) / STEP_MM);
    int column = one.alongMm().indexOf(found.to().yMm());
    assertEquals(row * one.alongMm().size() + column + 1, drawn);
    assertEquals(found, one.found(search, nothing));
    assertEquals(drawn, one.can().drawn);
  }
}

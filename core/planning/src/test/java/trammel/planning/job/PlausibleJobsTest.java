package trammel.planning.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;
import trammel.testsupport.vehicle.JobText;
import trammel.testsupport.vehicle.PlausibleVehicle;

class PlausibleJobsTest {

  @Seeds(400)
  void aPlausibleVehicleIsReadWithoutAWordAgainstItsMeasurements(Draw draw) {
    PlausibleVehicle vehicle = PlausibleVehicle.draw(draw);
    String text = JobText.of(vehicle, "R-1", "triangulated", "coil-spring", "inboard");

    Job job = JobReader.read("drawn.yaml", text);

    assertEquals(List.of(), job.warnings());
    assertEquals(vehicle.obstructions().size(), job.measured().obstacles().size());
  }
}

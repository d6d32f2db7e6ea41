package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.app.json.GltfScene;
import trammel.assembly.Assembly;
import trammel.assembly.FlatPath;
import trammel.assembly.PartKind;
import trammel.assembly.Place;
import trammel.assembly.PlacedPart;
import trammel.assembly.PlacedSeam;
import trammel.assembly.Prism;
import trammel.assembly.SeamRun;
import trammel.assembly.Turned;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.quantity.Phrase;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;

/** The file as a library that knows nothing of this project reads it. */
class GltfSceneIT {
  private static final Place LEANING =
      Place.of(new Point3(900, 400, 300), new Vector3(0.6, 0, 0.8), new Vector3(0, 1, 0));

  private static Assembly twoParts() {
    PlacedPart plate =
        new PlacedPart(
            "shelf",
            "shelf",
            PartKind.PLATE,
            Assembly.FRAME,
            LEANING,
            Prism.block(200, 100, 10),
            1.57,
            Phrase.of("carries the bar"));
    PlacedPart bar =
        new PlacedPart(
            "round bar",
            "round bar",
            PartKind.TUBE,
            Assembly.AXLE,
            Place.at(new Point3(0, -200, 500)),
            Turned.bar(20, 300),
            2.96,
            Phrase.of("stands on the axle"));
    PlacedSeam seam =
        new PlacedSeam(
            "bar to shelf",
            "bar to shelf",
            new SeamRun(
                "round bar", "shelf", FlatPath.circle(Place.at(new Point3(0, -200, 500)), 20)),
            5,
            "flat");
    return new Assembly(
        List.of(Assembly.FRAME, Assembly.AXLE), List.of(plate, bar), List.of(seam), List.of());
  }

  @Test
  void partsStandInMetresWithYUp() throws IOException {
    GltfScan scan = new GltfScan(GltfScene.text(twoParts(), new QuantityPrinter(UnitSystem.US)));

    GltfScan.Item shelf = scan.items().get("shelf");
    assertEquals("frame", shelf.body());
    assertEquals(0.2 * 0.1 * 0.01, shelf.volumeM3(), 1e-9);
    // Half the thickness along its normal (-0.8, 0, 0.6): 896 forward, 400 left, 303 up.
    assertArrayEquals(new double[] {0.400, 0.303, 0.896}, shelf.centre(), 1e-6);
    assertEquals(1.57, ((Number) shelf.extras().get("mass_kg")).doubleValue());

    GltfScan.Item bar = scan.items().get("round bar");
    assertEquals("axle", bar.body());
    assertEquals(Math.PI * 0.02 * 0.02 * 0.3, bar.volumeM3(), 1e-9);
    assertArrayEquals(new double[] {-0.200, 0.650, 0}, bar.centre(), 1e-6);
  }

  /** Whoever compares two plans by their sums is not told of a change where there is none. */
  @Test
  void keysStandInTheSameOrderInEveryRun() {
    String text = GltfScene.text(twoParts(), new QuantityPrinter(UnitSystem.US));
    assertTrue(text.indexOf("\"version\"") < text.indexOf("\"generator\""), text);
    assertTrue(text.indexOf("\"at ride\"") < text.indexOf("\"nodes\""), text);
  }

  @Test
  void weldsAreLinesOfTheirLength() throws IOException {
    GltfScan scan = new GltfScan(GltfScene.text(twoParts(), new QuantityPrinter(UnitSystem.US)));
    GltfScan.Item seam = scan.items().get("bar to shelf");
    assertEquals("welds", seam.body());
    double round = 2 * Math.PI * 0.02;
    assertEquals(round, seam.lineM(), 0.01 * round);
    assertEquals(1000 * round, ((Number) seam.extras().get("length_mm")).doubleValue(), 1e-9);
  }
}

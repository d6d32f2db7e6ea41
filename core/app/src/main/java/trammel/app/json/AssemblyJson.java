package trammel.app.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.assembly.Assembly;
import trammel.assembly.PlacedPart;
import trammel.assembly.PlacedSeam;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.quantity.ReaderUnits;

/** Where every part and weld of a job stands at ride, so that others can draw it. */
public final class AssemblyJson {
  private AssemblyJson() {}

  /** Parts with their axes and origins, welds with their ends, and what the job adds. */
  public static Map<String, Object> of(Assembly assembly, ReaderUnits units) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("axes", "x forward, y left, z up, origin on the ground under the axle's middle, mm");
    json.put("bodies", assembly.bodies());
    json.put("parts", assembly.parts().stream().map(part -> part(part, units)).toList());
    json.put("seams", assembly.seams().stream().map(AssemblyJson::seam).toList());
    json.put("added_kg", assembly.addedKg());
    assembly.addedCentre().ifPresent(centre -> json.put("added_centre_mm", point(centre)));
    json.put("weld_mm", assembly.weldMm());
    return json;
  }

  private static Map<String, Object> part(PlacedPart part, ReaderUnits units) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("id", part.id());
    row.put("name", part.name());
    row.put("kind", part.kind().word());
    row.put("carrier", part.carrier());
    row.put("origin_mm", point(part.place().origin()));
    row.put("x", vector(part.place().x()));
    row.put("y", vector(part.place().y()));
    row.put("z", vector(part.place().z()));
    row.put("mass_kg", part.massKg());
    row.put("volume_mm3", part.solid().volumeMm3());
    row.put("why", part.why().in(units));
    return row;
  }

  private static Map<String, Object> seam(PlacedSeam seam) {
    List<Point3> points = new ArrayList<>(seam.run().path().points(1));
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("id", seam.id());
    row.put("line", seam.name());
    row.put("parts", seam.run().parts());
    row.put("onto", seam.run().onto());
    row.put("length_mm", seam.run().path().lengthMm());
    row.put("size_mm", seam.sizeMm());
    row.put("from_mm", point(points.get(0)));
    row.put("to_mm", point(points.get(points.size() - 1)));
    return row;
  }

  private static List<Double> point(Point3 point) {
    return List.of(point.xMm(), point.yMm(), point.zMm());
  }

  private static List<Double> vector(Vector3 vector) {
    return List.of(vector.x(), vector.y(), vector.z());
  }
}

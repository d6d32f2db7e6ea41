package trammel.page.json;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trammel.assembly.Assembly;
import trammel.assembly.Mesh;
import trammel.assembly.Place;
import trammel.assembly.PlacedPart;
import trammel.assembly.PlacedSeam;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.engine.layout.Travel;
import trammel.engine.quantity.ReaderUnits;

/**
 * An assembly for drawing: every part with its place and the name of its form, and the triangles of
 * those forms that whoever asks does not have yet. Most parts keep their form when a job changes.
 */
public final class SceneJson {
  private static final double SEAM_CHORD_MM = 1;
  private static final int KEY_SIGNS = 20;

  private final Set<String> known;
  private final ReaderUnits units;
  private final Map<String, Object> shapes = new LinkedHashMap<>();

  private SceneJson(Set<String> known, ReaderUnits units) {
    this.known = known;
    this.units = units;
  }

  /**
   * The scene.
   *
   * @param known names of the forms that need not be sent
   * @param units the units of the reader
   */
  public static Map<String, Object> of(
      Assembly assembly, Layout layout, Set<String> known, ReaderUnits units) {
    return new SceneJson(known, units).scene(assembly, layout);
  }

  private Map<String, Object> scene(Assembly assembly, Layout layout) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("axes", "x forward, y left, z up, origin on the ground under the axle's middle, mm");
    json.put("bodies", assembly.bodies());
    json.put("parts", assembly.parts().stream().map(this::part).toList());
    json.put("seams", assembly.seams().stream().map(SceneJson::seam).toList());
    json.put("shapes", shapes);
    json.put("points", points(layout));
    json.put("travel", travel(layout));
    json.put("added_kg", assembly.addedKg());
    return json;
  }

  private Map<String, Object> part(PlacedPart part) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("id", part.id());
    row.put("name", part.name());
    row.put("kind", part.kind().word());
    row.put("carrier", part.carrier());
    row.put("place", columns(part.place()));
    row.put("shape", shape(part.solid().mesh()));
    row.put("mass_kg", part.massKg());
    row.put("why", part.why().in(units));
    return row;
  }

  private static List<Double> columns(Place place) {
    List<Double> sixteen = new ArrayList<>(16);
    for (Vector3 axis : List.of(place.x(), place.y(), place.z())) {
      sixteen.addAll(List.of(axis.x(), axis.y(), axis.z(), 0.0));
    }
    Point3 origin = place.origin();
    sixteen.addAll(List.of(origin.xMm(), origin.yMm(), origin.zMm(), 1.0));
    return sixteen;
  }

  /** The name of a form; its triangles are added if they are not known. */
  private String shape(Mesh mesh) {
    ByteBuffer corners =
        ByteBuffer.allocate(3 * Float.BYTES * mesh.corners().size()).order(ByteOrder.LITTLE_ENDIAN);
    for (Point3 corner : mesh.corners()) {
      corners.putFloat((float) corner.xMm());
      corners.putFloat((float) corner.yMm());
      corners.putFloat((float) corner.zMm());
    }
    ByteBuffer faces =
        ByteBuffer.allocate(3 * Integer.BYTES * mesh.faces().size()).order(ByteOrder.LITTLE_ENDIAN);
    for (Mesh.Face face : mesh.faces()) {
      faces.putInt(face.a());
      faces.putInt(face.b());
      faces.putInt(face.c());
    }
    String key = key(corners, faces);
    if (!known.contains(key) && !shapes.containsKey(key)) {
      Map<String, Object> shape = new LinkedHashMap<>();
      shape.put("corners", Base64.getEncoder().encodeToString(corners.array()));
      shape.put("faces", Base64.getEncoder().encodeToString(faces.array()));
      shapes.put(key, shape);
    }
    return key;
  }

  private static String key(ByteBuffer corners, ByteBuffer faces) {
    try {
      MessageDigest sum = MessageDigest.getInstance("SHA-256");
      sum.update(corners.array());
      sum.update(faces.array());
      return HexFormat.of().formatHex(sum.digest()).substring(0, KEY_SIGNS);
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException(missing);
    }
  }

  private static Map<String, Object> seam(PlacedSeam seam) {
    List<List<Point3>> stretches = seam.run().path().stretches(SEAM_CHORD_MM);
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("id", seam.id());
    row.put("line", seam.name());
    row.put("parts", seam.run().parts());
    row.put("onto", seam.run().onto());
    row.put("length_mm", seam.run().path().lengthMm());
    row.put("size_mm", seam.sizeMm());
    row.put("position", seam.position());
    row.put("path", stretches.stream().map(SceneJson::polyline).toList());
    return row;
  }

  private static List<Double> polyline(List<Point3> points) {
    List<Double> numbers = new ArrayList<>(3 * points.size());
    for (Point3 point : points) {
      numbers.addAll(point(point));
    }
    return numbers;
  }

  /** The ends of bars, springs and shocks at ride. */
  public static List<Object> points(Layout layout) {
    List<Object> rows = new ArrayList<>();
    for (Bar bar : layout.bars()) {
      rows.add(member(bar.name(), "bar", bar.frame(), bar.axle()));
    }
    for (SpringUnit spring : layout.springs()) {
      rows.add(member(spring.name(), "spring", spring.frame(), spring.axle()));
    }
    for (ShockUnit shock : layout.shocks()) {
      rows.add(member(shock.name(), "shock", shock.frame(), shock.axle()));
    }
    return rows;
  }

  private static Map<String, Object> member(String name, String kind, Point3 frame, Point3 axle) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("name", name);
    row.put("kind", kind);
    row.put("frame", point(frame));
    row.put("axle", point(axle));
    return row;
  }

  /** How far the axle moves. */
  private static Map<String, Object> travel(Layout layout) {
    Travel travel = layout.chassis().travel();
    double share = (travel.bumpMm() + travel.droopMm()) / layout.chassis().axle().trackMm();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("bump_mm", travel.bumpMm());
    json.put("droop_mm", travel.droopMm());
    json.put("roll_most_deg", Math.toDegrees(Math.asin(Math.min(1, share))));
    return json;
  }

  private static List<Double> point(Point3 point) {
    return List.of(point.xMm(), point.yMm(), point.zMm());
  }
}

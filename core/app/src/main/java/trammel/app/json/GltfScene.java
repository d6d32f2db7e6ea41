package trammel.app.json;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.assembly.Assembly;
import trammel.assembly.Mesh;
import trammel.assembly.PartKind;
import trammel.assembly.Place;
import trammel.assembly.PlacedPart;
import trammel.assembly.PlacedSeam;
import trammel.engine.geometry.Point3;
import trammel.engine.quantity.ReaderUnits;

/**
 * An assembly at ride as a scene for any viewer of glTF 2.0 (Khronos Group, ISO/IEC 12113:2022):
 * metres, Y up, one node a part under the node of what carries it, welds as lines. Everything is in
 * the one file; the core of the standard is enough to read it.
 */
public final class GltfScene {
  private static final double METRE_MM = 1000;
  private static final double SEAM_CHORD_MM = 0.1;
  private static final int FLOATS = 5126;
  private static final int UNSIGNED_INTEGERS = 5125;
  private static final int VERTICES = 34962;
  private static final int INDICES = 34963;
  private static final int TRIANGLES = 4;
  private static final int LINES = 1;

  /** Forward, left, up of the vehicle become Z, X and Y: a third of a turn about their diagonal. */
  private static final List<Double> Y_UP = List.of(-0.5, -0.5, -0.5, 0.5);

  private final Assembly assembly;
  private final ReaderUnits units;
  private final List<Object> nodes = new ArrayList<>();
  private final List<Object> meshes = new ArrayList<>();
  private final List<Object> accessors = new ArrayList<>();
  private final List<Object> views = new ArrayList<>();
  private final List<ByteBuffer> chunks = new ArrayList<>();
  private int bytes;

  private GltfScene(Assembly assembly, ReaderUnits units) {
    this.assembly = assembly;
    this.units = units;
  }

  /**
   * The scene as the text of a {@code .gltf} file.
   *
   * @param units the units of the reader, for what asks for each part
   */
  public static String text(Assembly assembly, ReaderUnits units) {
    return new GltfScene(assembly, units).text();
  }

  private String text() {
    Map<String, Object> vehicle = new LinkedHashMap<>();
    nodes.add(vehicle);
    vehicle.put("name", "vehicle");
    vehicle.put("rotation", Y_UP);
    List<Object> bodies = new ArrayList<>();
    for (String body : assembly.bodies()) {
      bodies.add(body(body));
    }
    bodies.add(seams());
    vehicle.put("children", bodies);

    Map<String, Object> json = new LinkedHashMap<>();
    json.put("asset", asset());
    json.put("scene", 0);
    json.put("scenes", List.of(scene()));
    json.put("nodes", nodes);
    json.put("meshes", meshes);
    json.put("materials", materials());
    json.put("accessors", accessors);
    json.put("bufferViews", views);
    json.put("buffers", List.of(buffer()));
    return Json.text(json);
  }

  private static Map<String, Object> asset() {
    Map<String, Object> asset = new LinkedHashMap<>();
    asset.put("version", "2.0");
    asset.put("generator", "Trammel");
    return asset;
  }

  private static Map<String, Object> scene() {
    Map<String, Object> scene = new LinkedHashMap<>();
    scene.put("name", "at ride");
    scene.put("nodes", List.of(0));
    return scene;
  }

  private static List<Object> materials() {
    List<Object> materials = new ArrayList<>();
    for (PartKind kind : PartKind.values()) {
      materials.add(material(kind.word(), colour(kind)));
    }
    materials.add(material("weld", List.of(0.9, 0.1, 0.1, 1.0)));
    return materials;
  }

  private static List<Double> colour(PartKind kind) {
    return switch (kind) {
      case PLATE -> List.of(0.25, 0.42, 0.68, 1.0);
      case TUBE -> List.of(0.85, 0.55, 0.15, 1.0);
      case BOUGHT -> List.of(0.30, 0.60, 0.35, 1.0);
      case BOLT -> List.of(0.85, 0.80, 0.30, 1.0);
      case VEHICLE -> List.of(0.62, 0.62, 0.62, 1.0);
      case TOOL -> List.of(0.60, 0.45, 0.65, 1.0);
    };
  }

  private static Map<String, Object> material(String name, List<Double> colour) {
    Map<String, Object> surface = new LinkedHashMap<>();
    surface.put("baseColorFactor", colour);
    surface.put("metallicFactor", 0.1);
    surface.put("roughnessFactor", 0.7);
    Map<String, Object> material = new LinkedHashMap<>();
    material.put("name", name);
    material.put("pbrMetallicRoughness", surface);
    return material;
  }

  private int body(String body) {
    Map<String, Object> node = new LinkedHashMap<>();
    int number = nodes.size();
    nodes.add(node);
    node.put("name", body);
    List<Object> children = new ArrayList<>();
    for (PlacedPart part : assembly.parts()) {
      if (part.carrier().equals(body)) {
        children.add(part(part));
      }
    }
    if (!children.isEmpty()) {
      node.put("children", children);
    }
    return number;
  }

  private int part(PlacedPart part) {
    Map<String, Object> extras = new LinkedHashMap<>();
    extras.put("name", part.name());
    extras.put("kind", part.kind().word());
    extras.put("mass_kg", part.massKg());
    extras.put("volume_mm3", part.solid().volumeMm3());
    extras.put("why", part.why().in(units));
    Map<String, Object> node = new LinkedHashMap<>();
    node.put("name", part.id());
    node.put("matrix", matrix(part.place()));
    node.put("mesh", mesh(part));
    node.put("extras", extras);
    nodes.add(node);
    return nodes.size() - 1;
  }

  /** Column by column. */
  private static List<Double> matrix(Place place) {
    return List.of(
        place.x().x(),
        place.x().y(),
        place.x().z(),
        0.0,
        place.y().x(),
        place.y().y(),
        place.y().z(),
        0.0,
        place.z().x(),
        place.z().y(),
        place.z().z(),
        0.0,
        place.origin().xMm() / METRE_MM,
        place.origin().yMm() / METRE_MM,
        place.origin().zMm() / METRE_MM,
        1.0);
  }

  private int mesh(PlacedPart part) {
    Mesh mesh = part.solid().mesh();
    List<Integer> indices = new ArrayList<>(3 * mesh.faces().size());
    for (Mesh.Face face : mesh.faces()) {
      indices.add(face.a());
      indices.add(face.b());
      indices.add(face.c());
    }
    return mesh(part.id(), mesh.corners(), indices, TRIANGLES, part.kind().ordinal());
  }

  private int seams() {
    Map<String, Object> node = new LinkedHashMap<>();
    int number = nodes.size();
    nodes.add(node);
    node.put("name", "welds");
    List<Object> children = new ArrayList<>();
    for (PlacedSeam seam : assembly.seams()) {
      children.add(seam(seam));
    }
    if (!children.isEmpty()) {
      node.put("children", children);
    }
    return number;
  }

  private int seam(PlacedSeam seam) {
    List<List<Point3>> stretches = seam.run().path().stretches(SEAM_CHORD_MM);
    List<Point3> points = new ArrayList<>();
    List<Integer> indices = new ArrayList<>();
    for (List<Point3> stretch : stretches) {
      for (int i = 0; i + 1 < stretch.size(); i++) {
        indices.add(points.size() + i);
        indices.add(points.size() + i + 1);
      }
      points.addAll(stretch);
    }
    Map<String, Object> extras = new LinkedHashMap<>();
    extras.put("name", seam.name());
    extras.put("parts", seam.run().parts());
    extras.put("onto", seam.run().onto());
    extras.put("length_mm", seam.run().path().lengthMm());
    extras.put("size_mm", seam.sizeMm());
    Map<String, Object> node = new LinkedHashMap<>();
    node.put("name", seam.id());
    node.put("mesh", mesh(seam.id(), points, indices, LINES, PartKind.values().length));
    node.put("extras", extras);
    nodes.add(node);
    return nodes.size() - 1;
  }

  private int mesh(
      String name, List<Point3> points, List<Integer> indices, int mode, int material) {
    Map<String, Object> primitive = new LinkedHashMap<>();
    primitive.put("attributes", Map.of("POSITION", positions(points)));
    primitive.put("indices", indices(indices));
    primitive.put("mode", mode);
    primitive.put("material", material);
    Map<String, Object> mesh = new LinkedHashMap<>();
    mesh.put("name", name);
    mesh.put("primitives", List.of(primitive));
    meshes.add(mesh);
    return meshes.size() - 1;
  }

  private int positions(List<Point3> points) {
    float[] least = {Float.POSITIVE_INFINITY, Float.POSITIVE_INFINITY, Float.POSITIVE_INFINITY};
    float[] most = {Float.NEGATIVE_INFINITY, Float.NEGATIVE_INFINITY, Float.NEGATIVE_INFINITY};
    ByteBuffer chunk = chunk(3 * points.size());
    for (Point3 point : points) {
      float[] metres = {
        (float) (point.xMm() / METRE_MM),
        (float) (point.yMm() / METRE_MM),
        (float) (point.zMm() / METRE_MM)
      };
      for (int i = 0; i < metres.length; i++) {
        chunk.putFloat(metres[i]);
        least[i] = Math.min(least[i], metres[i]);
        most[i] = Math.max(most[i], metres[i]);
      }
    }
    Map<String, Object> accessor = accessor(FLOATS, points.size(), "VEC3", VERTICES, chunk);
    accessor.put("min", List.of((double) least[0], (double) least[1], (double) least[2]));
    accessor.put("max", List.of((double) most[0], (double) most[1], (double) most[2]));
    return accessors.size() - 1;
  }

  private int indices(List<Integer> indices) {
    ByteBuffer chunk = chunk(indices.size());
    indices.forEach(chunk::putInt);
    accessor(UNSIGNED_INTEGERS, indices.size(), "SCALAR", INDICES, chunk);
    return accessors.size() - 1;
  }

  private static ByteBuffer chunk(int numbers) {
    return ByteBuffer.allocate(Integer.BYTES * numbers).order(ByteOrder.LITTLE_ENDIAN);
  }

  private Map<String, Object> accessor(
      int numbers, int count, String type, int target, ByteBuffer chunk) {
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("buffer", 0);
    view.put("byteOffset", bytes);
    view.put("byteLength", chunk.capacity());
    view.put("target", target);
    views.add(view);
    chunks.add(chunk);
    bytes += chunk.capacity();
    Map<String, Object> accessor = new LinkedHashMap<>();
    accessor.put("bufferView", views.size() - 1);
    accessor.put("componentType", numbers);
    accessor.put("count", count);
    accessor.put("type", type);
    accessors.add(accessor);
    return accessor;
  }

  private Map<String, Object> buffer() {
    ByteBuffer whole = ByteBuffer.allocate(bytes);
    for (ByteBuffer chunk : chunks) {
      whole.put(chunk.array());
    }
    Map<String, Object> buffer = new LinkedHashMap<>();
    buffer.put("byteLength", bytes);
    buffer.put(
        "uri",
        "data:application/octet-stream;base64,"
            + Base64.getEncoder().encodeToString(whole.array()));
    return buffer;
  }
}

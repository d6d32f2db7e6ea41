package trammel.bin;

import de.javagl.jgltf.model.AccessorFloatData;
import de.javagl.jgltf.model.AccessorIntData;
import de.javagl.jgltf.model.GltfModel;
import de.javagl.jgltf.model.MeshPrimitiveModel;
import de.javagl.jgltf.model.NodeModel;
import de.javagl.jgltf.model.io.GltfModelReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a glTF file holds, read by a library of another kind and summed here by other means than the
 * program's: everything in the file's own metres, Y up.
 */
final class GltfScan {
  /**
   * One node with a mesh.
   *
   * @param body name of the node above it
   * @param volumeM3 enclosed volume of its triangles
   * @param centre their middle as it stands in the scene
   * @param lineM length of its lines
   * @param extras what is noted on it
   */
  record Item(String body, double volumeM3, double[] centre, double lineM, Map<?, ?> extras) {}

  private final Map<String, Item> items = new LinkedHashMap<>();

  /** Reads a file's text. */
  GltfScan(String text) throws IOException {
    GltfModel model =
        new GltfModelReader()
            .readWithoutReferences(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    for (NodeModel node : model.getNodeModels()) {
      if (!node.getMeshModels().isEmpty()) {
        items.put(node.getName(), item(node));
      }
    }
  }

  /** Nodes with meshes, by name. */
  Map<String, Item> items() {
    return items;
  }

  private static Item item(NodeModel node) {
    MeshPrimitiveModel primitive = node.getMeshModels().get(0).getMeshPrimitiveModels().get(0);
    AccessorFloatData data =
        (AccessorFloatData) primitive.getAttributes().get("POSITION").getAccessorData();
    float[] matrix = new float[16];
    node.computeGlobalTransform(matrix);
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i < data.getNumElements(); i++) {
      points.add(placed(matrix, data.get(i, 0), data.get(i, 1), data.get(i, 2)));
    }
    List<Integer> indices = indices(primitive);
    Map<?, ?> extras = (Map<?, ?>) node.getExtras();
    String body = node.getParent() == null ? "" : node.getParent().getName();
    return primitive.getMode() == 1
        ? new Item(body, 0, new double[3], lines(points, indices), extras)
        : triangles(body, points, indices, extras);
  }

  private static List<Integer> indices(MeshPrimitiveModel primitive) {
    var data = (AccessorIntData) primitive.getIndices().getAccessorData();
    List<Integer> indices = new ArrayList<>();
    for (int i = 0; i < data.getNumElements(); i++) {
      indices.add(data.get(i));
    }
    return indices;
  }

  private static double[] placed(float[] m, double x, double y, double z) {
    return new double[] {
      m[0] * x + m[4] * y + m[8] * z + m[12],
      m[1] * x + m[5] * y + m[9] * z + m[13],
      m[2] * x + m[6] * y + m[10] * z + m[14]
    };
  }

  private static double lines(List<double[]> points, List<Integer> indices) {
    double length = 0;
    for (int i = 0; i + 1 < indices.size(); i += 2) {
      length += distance(points.get(indices.get(i)), points.get(indices.get(i + 1)));
    }
    return length;
  }

  private static double distance(double[] a, double[] b) {
    return Math.sqrt(
        (a[0] - b[0]) * (a[0] - b[0])
            + (a[1] - b[1]) * (a[1] - b[1])
            + (a[2] - b[2]) * (a[2] - b[2]));
  }

  /** Prisms down to the plane y = 0 under every triangle: volume and first moments. */
  private static Item triangles(
      String body, List<double[]> points, List<Integer> indices, Map<?, ?> extras) {
    double volume = 0;
    double[] moment = new double[3];
    double[] about = points.get(0);
    for (int i = 0; i + 2 < indices.size(); i += 3) {
      double[] a = from(about, points.get(indices.get(i)));
      double[] b = from(about, points.get(indices.get(i + 1)));
      double[] c = from(about, points.get(indices.get(i + 2)));
      double shadow = ((b[2] - a[2]) * (c[0] - a[0]) - (b[0] - a[0]) * (c[2] - a[2])) / 2;
      double[][] middles = {middle(a, b), middle(b, c), middle(c, a)};
      volume += shadow * (a[1] + b[1] + c[1]) / 3;
      for (double[] m : middles) {
        // Middles of the sides integrate a square exactly over a triangle.
        moment[0] += shadow / 3 * m[0] * m[1];
        moment[1] += shadow / 3 * m[1] * m[1] / 2;
        moment[2] += shadow / 3 * m[2] * m[1];
      }
    }
    double[] centre = {
      about[0] + moment[0] / volume, about[1] + moment[1] / volume, about[2] + moment[2] / volume
    };
    return new Item(body, volume, centre, 0, extras);
  }

  private static double[] from(double[] about, double[] point) {
    return new double[] {point[0] - about[0], point[1] - about[1], point[2] - about[2]};
  }

  private static double[] middle(double[] a, double[] b) {
    return new double[] {(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2};
  }
}

package trammel.reading.fields;

import java.util.ArrayList;
import java.util.List;

/** The three keys of a place, as fields of one sort. */
final class AxisFields<T> {
  private final Field<T> forward;
  private final Field<T> left;
  private final Field<T> up;

  AxisFields(ValueType<T> axis, boolean required) {
    this.forward = axisField("forward", "distance forward", axis, required);
    this.left = axisField("left", "distance to the left; negative to the right", axis, required);
    this.up = axisField("up", "distance up", axis, required);
  }

  private static <T> Field<T> axisField(
      String key, String help, ValueType<T> axis, boolean required) {
    Field<T> field = new Field<>(key, help, axis);
    return required ? field : field.optional();
  }

  Field<T> forward() {
    return forward;
  }

  Field<T> left() {
    return left;
  }

  Field<T> up() {
    return up;
  }

  List<Field<?>> all() {
    List<Field<?>> all = new ArrayList<>(3);
    all.add(forward);
    all.add(left);
    all.add(up);
    return all;
  }
}

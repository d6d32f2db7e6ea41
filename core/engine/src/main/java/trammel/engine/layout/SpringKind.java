package trammel.engine.layout;

/** The kind of spring that carries a corner. */
public enum SpringKind {
  COIL,
  AIR
}

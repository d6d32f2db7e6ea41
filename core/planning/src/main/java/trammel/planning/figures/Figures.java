package trammel.planning.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All figures of the tool. */
public final class Figures {
  private Figures() {}

  private static List<FigureGroup> groups() {
    return List.of(
        new SteelFigures(),
        new StrengthFigures(),
        new BoltFigures(),
        new LinkageFigures(),
        new SpringFigures(),
        new DrivelineFigures(),
        new ShapingFigures(),
        new CuttingFigures(),
        new WeldingFigures(),
        new LabourFigures(),
        new MoneyFigures());
  }

  /** Every figure, subject by subject. */
  public static List<Figure> all() {
    List<Figure> all = new ArrayList<>();
    for (FigureGroup group : groups()) {
      all.addAll(group.figures());
    }
    return List.copyOf(all);
  }

  /** The figure of this name. */
  public static Optional<Figure> find(String name) {
    for (FigureGroup group : groups()) {
      for (Figure figure : group.figures()) {
        if (figure.name().equals(name)) {
          return Optional.of(figure);
        }
      }
    }
    return Optional.empty();
  }
}

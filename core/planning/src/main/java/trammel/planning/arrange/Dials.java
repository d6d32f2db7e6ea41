package trammel.planning.arrange;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import trammel.engine.layout.Bar;
import trammel.engine.layout.BracketPlate;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Rails;
import trammel.planning.draft.Draft;
import trammel.planning.job.JobDocument;
import trammel.planning.job.NotchKind;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldKind;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.ListNode;
import trammel.reading.tree.NumberNode;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.TextNode;

/**
 * What a search may turn on one kind of layout: the options that its linkage and its spring
 * declare, as far as they are no measurements, the travel within what the owner allows, and the
 * kind of notch.
 */
final class Dials {
  static final String LINKAGE_OPTIONS = "chosen.linkage_options";
  static final String SPRING_OPTIONS = "chosen.spring_options";
  static final String BUMP = "chosen.ride.bump";
  static final String DROOP = "chosen.ride.droop";
  static final String NOTCH = "chosen.notch";
  static final String RIDE_HEIGHT = "chosen.ride.rail_underside_at_axle";

  private static final double INCH_MM = 25.4;

  /** Bump travel that its check calls good, 3 in; an owner who asks for more may get as little. */
  private static final double GOOD_BUMP_MM = 3 * INCH_MM;

  /** Bump may come out this much more than asked for, droop this much less. */
  private static final double ALLOWED_MM = INCH_MM / 2;

  /** Joints are turned in pairs, and these say nothing of how a layout moves or holds. */
  private static final List<String> LEFT_ALONE =
      List.of("frame_end", "axle_end", "mounting", "frame_holes", "hole_pitch", "lightening");

  private final JobDocument document;
  private final Wishes wishes;
  private final ShopStep step;

  Dials(JobDocument document, Wishes wishes, ShopStep step) {
    this.document = document;
    this.wishes = wishes;
    this.step = step;
  }

  /** The dials of a layout. */
  List<Dial> of(Draft draft) {
    return of(
        draft.linkage().options(draft.linkageSite().catalog()),
        draft.spring().options(draft.springSite().catalog()));
  }

  /** The dials of a linkage's and a spring's options. */
  List<Dial> of(List<Field<?>> linkage, List<Field<?>> spring) {
    List<Dial> dials = new ArrayList<>();
    addOptions(dials, LINKAGE_OPTIONS, linkage);
    addOptions(dials, SPRING_OPTIONS, spring);
    addTravel(dials);
    addNotch(dials);
    dials.removeIf(dial -> wishes.keeps(dial.path()));
    for (Map.Entry<String, String> one : wishes.vary().entrySet()) {
      dials.removeIf(dial -> dial.path().equals(one.getKey()));
      dials.add(new VaryRange(one.getKey(), one.getValue(), step).dial());
    }
    return dials;
  }

  /** The side of the rails, which a search over kinds of layout leaves alone. */
  static List<Dial> mounting(List<Field<?>> linkage) {
    return linkage.stream()
        .filter(option -> option.key().equals("mounting"))
        .map(
            option ->
                new Dial(
                    LINKAGE_OPTIONS + "." + option.key(),
                    Dial.Kind.CHOICE,
                    0,
                    0,
                    OptionalDouble.empty(),
                    option.choices()))
        .toList();
  }

  private static void addNotch(List<Dial> dials) {
    dials.add(
        new Dial(
            NOTCH, Dial.Kind.CHOICE, 0, 0, OptionalDouble.empty(), List.copyOf(NotchKind.words())));
  }

  private void addTravel(List<Dial> dials) {
    written(document, BUMP)
        .map(text -> step.value(Dial.Kind.LENGTH, text))
        .ifPresent(
            askedMm ->
                dials.add(
                    length(
                        BUMP,
                        Math.min(askedMm, GOOD_BUMP_MM),
                        Math.max(askedMm, GOOD_BUMP_MM) + ALLOWED_MM)));
    written(document, DROOP)
        .map(text -> step.value(Dial.Kind.LENGTH, text))
        .ifPresent(askedMm -> dials.add(length(DROOP, askedMm - ALLOWED_MM, askedMm)));
  }

  private static Dial length(String path, double least, double most) {
    return new Dial(path, Dial.Kind.LENGTH, least, most, OptionalDouble.empty(), List.of());
  }

  private static void addOptions(List<Dial> dials, String group, List<Field<?>> options) {
    for (Field<?> option : options) {
      if (LEFT_ALONE.contains(option.key()) || option.datum().isPresent()) {
        continue;
      }
      kind(option)
          .ifPresent(
              kind ->
                  dials.add(
                      new Dial(
                          group + "." + option.key(),
                          kind,
                          option.min().orElse(Double.NEGATIVE_INFINITY),
                          option.max().orElse(Double.POSITIVE_INFINITY),
                          usual(option),
                          option.choices())));
    }
  }

  private static OptionalDouble usual(Field<?> option) {
    return option.defaultValue().isPresent() && option.defaultValue().get() instanceof Double value
        ? OptionalDouble.of(value)
        : OptionalDouble.empty();
  }

  private static Optional<Dial.Kind> kind(Field<?> option) {
    if (option.kind() == FieldKind.LENGTH) {
      return Optional.of(Dial.Kind.LENGTH);
    }
    if (option.kind() == FieldKind.ANGLE) {
      return Optional.of(Dial.Kind.ANGLE);
    }
    if (option.kind() == FieldKind.NUMBER) {
      return Optional.of(Dial.Kind.NUMBER);
    }
    return option.kind() == FieldKind.CHOICE && option.choices().size() > 1
        ? Optional.of(Dial.Kind.CHOICE)
        : Optional.empty();
  }

  /** Where a dial stands: as changed, as written, as usual, or as the vehicle decided. */
  OptionalDouble value(Dial dial, Trial trial) {
    Optional<String> text = text(dial, trial);
    if (text.isPresent()) {
      return OptionalDouble.of(step.value(dial.kind(), text.get()));
    }
    return dial.usual().isPresent() ? dial.usual() : decided(dial, trial);
  }

  /** What is written for a dial, changes included; empty where nothing is. */
  Optional<String> text(Dial dial, Trial trial) {
    Optional<String> edited = trial.edits().text(dial.path());
    return edited.isPresent() || isReplaced(dial, trial) ? edited : written(document, dial.path());
  }

  /** Whether the group that holds it starts anew, so that what the file has there is gone. */
  private static boolean isReplaced(Dial dial, Trial trial) {
    String group = dial.path().substring(0, dial.path().lastIndexOf('.'));
    return trial.edits().text(group).isPresent();
  }

  private static OptionalDouble decided(Dial dial, Trial trial) {
    if (trial.draft().isEmpty()) {
      return OptionalDouble.empty();
    }
    Layout layout = trial.draft().get().layout();
    double upMm = layout.chassis().axleCentre().zMm();
    return switch (dial.key()) {
      case "lower_drop" ->
          layout.lower().stream().mapToDouble(bar -> upMm - bar.axle().zMm()).findFirst();
      case "upper_rise" ->
          layout.upper().stream().mapToDouble(bar -> bar.axle().zMm() - upMm).findFirst();
      case "lateral_behind" ->
          layout.across().stream().mapToDouble(bar -> -bar.axle().xMm()).findFirst();
      case "rail_gap" ->
          layout.lower().stream().mapToDouble(bar -> besideRailMm(bar, layout)).findFirst();
      default -> OptionalDouble.empty();
    };
  }

  /** From the brackets of a bar that runs along to the rail's face where it is closest (mm). */
  private static double besideRailMm(Bar bar, Layout layout) {
    Rails rails = layout.chassis().rails();
    double acrossMm = Math.abs(bar.axle().yMm());
    double halfMm =
        bar.axleJoint().widthMm() / 2 + bar.bracket().map(BracketPlate::thicknessMm).orElse(0.0);
    double frontMm = bar.frame().xMm();
    double innerMm = Math.min(rails.innerFaceMm(0), rails.innerFaceMm(frontMm));
    double outerMm = Math.max(rails.outerFaceMm(0), rails.outerFaceMm(frontMm));
    return acrossMm < innerMm ? innerMm - acrossMm - halfMm : acrossMm - outerMm - halfMm;
  }

  /**
   * What stands at a path of a document, groups and lists in brackets; empty where nothing does.
   */
  static Optional<String> given(JobDocument document, String path) {
    Optional<String> plain = written(document, path);
    return plain.isPresent() ? plain : document.node(path).map(Dials::inline);
  }

  private static String inline(DocumentNode node) {
    if (node instanceof ObjectNode group) {
      return group.members().stream()
          .map(member -> member.key() + ": " + inline(member.value()))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    if (node instanceof ListNode list) {
      return list.entries().stream().map(Dials::inline).collect(Collectors.joining(", ", "[", "]"));
    }
    if (node instanceof TextNode text) {
      return text.text();
    }
    return node instanceof NumberNode number ? number.text() : node.given();
  }

  /** What stands at a path of a document, if it is a plain value. */
  static Optional<String> written(JobDocument document, String path) {
    Optional<DocumentNode> value = document.node(path);
    if (value.isPresent() && value.get() instanceof TextNode text) {
      return Optional.of(text.text());
    }
    return value.isPresent() && value.get() instanceof NumberNode number
        ? Optional.of(number.text())
        : Optional.empty();
  }
}

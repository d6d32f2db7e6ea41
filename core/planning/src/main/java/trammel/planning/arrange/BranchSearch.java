package trammel.planning.arrange;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.function.BooleanSupplier;
import trammel.brackets.material.PlateMaterial;
import trammel.planning.catalog.Catalog;
import trammel.planning.draft.Extensions;
import trammel.planning.job.JobDocument;
import trammel.planning.options.JointPair;
import trammel.reading.fields.Field;

/**
 * Looks for the best layout of one kind: mends what can be worked out, then polls one field after
 * another in shop steps, those first that bear on the worst check, with strides that double while
 * they help and halve when nothing does. Method: pattern search on a mesh, Hooke and Jeeves,
 * "Direct search" solution of numerical and statistical problems, Journal of the ACM 8 (1961), with
 * the words of a choice as neighbours.
 */
final class BranchSearch {
  private static final double BETTER = 1e-9;
  private static final int MEND_ROUNDS = 4;
  private static final String CHEAPER = "a lower price";

  /** Choices of one field that are tried in a poll. */
  private static final int MOST_CHOICES = 8;

  private final Branch branch;
  private final TrialBench bench;
  private final Wishes wishes;
  private final ShopStep step;
  private final Catalog catalog;
  private final Dials dials;
  private final Additions additions;
  private final Mending mending;
  private final Ranking ranking;
  private final BooleanSupplier stopped;
  private final Random random;
  private final Set<String> polled = new HashSet<>();
  private Trial best;
  private int level;
  private int limit;
  private boolean done;
  private List<Edits> cheaper = new ArrayList<>();
  private List<Dial> known = List.of();

  BranchSearch(
      Branch branch,
      TrialBench bench,
      Wishes wishes,
      Extensions extensions,
      Catalog catalog,
      ShopStep step,
      BooleanSupplier stopped) {
    this.branch = branch;
    this.bench = bench;
    this.wishes = wishes;
    this.catalog = catalog;
    this.step = step;
    this.stopped = stopped;
    dials = new Dials(bench.document(), wishes, step);
    additions = new Additions(bench.document(), extensions, wishes);
    mending = new Mending(bench, wishes, step, catalog);
    ranking = new Ranking(wishes.goal());
    random = new Random(wishes.seed() * 7919L + branch.index());
  }

  Branch branch() {
    return branch;
  }

  /** The best so far. */
  Trial best() {
    return best;
  }

  /** Whether there is nothing left to turn. */
  boolean isDone() {
    return done;
  }

  int tried() {
    return bench.tried();
  }

  JobDocument document() {
    return bench.document();
  }

  /** What comes of other changes with so many trials more; the best of this search stays. */
  Trial relaxed(Edits edits, int trials) {
    Trial kept = best;
    int keptLevel = level;
    boolean wasDone = done;
    limit = bench.tried() + trials;
    level = 0;
    done = false;
    best = bench.of(edits);
    mend();
    while (!isOver() && !done && !best.passes()) {
      poll();
    }
    Trial reached = best;
    best = kept;
    level = keptLevel;
    done = wasDone;
    return reached;
  }

  /** The proposal as it comes, mended. */
  void start() {
    limit = Integer.MAX_VALUE;
    best = bench.of(branch.edits());
    mend();
    price();
  }

  /** Goes on for so many trials, or until there is nothing left to turn. */
  void spend(int trials) {
    limit = bench.tried() + trials;
    while (!isOver() && !done) {
      if (best.passes()) {
        makeCheaper();
      } else {
        poll();
      }
    }
  }

  private boolean isOver() {
    return bench.tried() >= limit || stopped.getAsBoolean();
  }

  private void mend() {
    for (int round = 0; round < MEND_ROUNDS && !best.passes() && !isOver(); round++) {
      Edits mended = mending.mended(best);
      if (mended.key().equals(best.edits().key()) || !take(mended)) {
        return;
      }
    }
  }

  /** Tries changes and takes them where they are nearer. */
  private boolean take(Edits edits) {
    Trial trial = bench.of(edits, best.penalty());
    if (trial.givenUp() || trial.penalty() >= best.penalty() - BETTER) {
      return false;
    }
    best = trial;
    return true;
  }

  private void price() {
    if (best.passes()) {
      best = bench.priced(best);
    }
  }

  /** One poll round what is best: ends with the first field that helps. */
  private void poll() {
    for (Dial dial : order()) {
      if (isOver()) {
        return;
      }
      if (dial.isChoice() ? chosen(dial) : turned(dial)) {
        mend();
        price();
        return;
      }
    }
    if (isOver()) {
      return;
    }
    level++;
    polled.clear();
    done = level >= ShopStep.levels();
    level = Math.min(level, ShopStep.levels() - 1);
  }

  /** The fields that bear on the worst checks first, then the others in an order of chance. */
  private List<Dial> order() {
    List<Dial> all = new ArrayList<>(dialsOfBest());
    Collections.shuffle(all, random);
    Set<Dial> ordered = new LinkedHashSet<>();
    if (best.draft().isEmpty()) {
      all.stream().filter(dial -> best.refusal().mentions(dial.key())).forEach(ordered::add);
      all.stream().filter(Dial::isChoice).forEach(ordered::add);
    }
    best.open()
        .forEach(
            finding ->
                Bearing.on(finding.check().id())
                    .forEach(
                        key ->
                            all.stream()
                                .filter(dial -> dial.key().equals(key))
                                .forEach(ordered::add)));
    additions.dial(best).ifPresent(ordered::add);
    ordered.addAll(all);
    return List.copyOf(ordered);
  }

  /** A layout that is refused has the dials of the last that was not, else those of its parts. */
  private List<Dial> dialsOfBest() {
    if (best.draft().isPresent()) {
      known = dials.of(best.draft().get());
    } else if (known.isEmpty()) {
      known = dials.of(branch.linkage().options(catalog), branch.spring().options(catalog));
    }
    return known;
  }

  private String reason() {
    return best.open().isEmpty() ? "the layout was refused" : Mending.reason(best.open().get(0));
  }

  /**
   * Whether a word names a plate thinner than the one that its option takes by itself. Bearing and
   * welds are judged, bending and fatigue of plates are not, so a search saves nothing there.
   */
  private boolean isThinPlate(Dial dial, String word) {
    List<Field<?>> options =
        dial.path().startsWith(Dials.LINKAGE_OPTIONS + ".")
            ? branch.linkage().options(catalog)
            : branch.spring().options(catalog);
    Optional<PlateMaterial> usual =
        options.stream()
            .filter(option -> option.key().equals(dial.key()))
            .findFirst()
            .flatMap(Field::defaultValue)
            .map(value -> catalog.plates().get(value.toString()));
    Optional<PlateMaterial> given = Optional.ofNullable(catalog.plates().get(word));
    return usual.isPresent()
        && given.isPresent()
        && given.get().form().thicknessMm() < usual.get().form().thicknessMm();
  }

  private boolean chosen(Dial dial) {
    String now = dials.text(dial, best).orElse("");
    List<String> others = new ArrayList<>(dial.choices());
    others.removeIf(word -> word.equals(now) || isThinPlate(dial, word));
    Collections.shuffle(others, random);
    String why = dial.path().equals(Additions.PATH) ? additions.reason(best) : reason();
    for (String word : others.subList(0, Math.min(MOST_CHOICES, others.size()))) {
      if (isOver()) {
        return false;
      }
      if (take(best.edits().with(dial.path(), word, why))) {
        return true;
      }
    }
    return false;
  }

  private boolean turned(Dial dial) {
    OptionalDouble now = dials.value(dial, best);
    if (now.isEmpty()) {
      return opened(dial);
    }
    double stride = step.stride(dial.kind(), level);
    int firstWay = random.nextBoolean() ? 1 : -1;
    for (int way : new int[] {firstWay, -firstWay}) {
      if (isOver()) {
        return false;
      }
      if (moved(dial, now.getAsDouble(), way * stride)) {
        stride(dial, way * stride);
        return true;
      }
    }
    return false;
  }

  /** A field that the vehicle decides and of which no value is known: a few over its range. */
  private boolean opened(Dial dial) {
    if (!polled.add(dial.path())) {
      return false;
    }
    for (int quarter = 1; quarter <= 3 && !isOver(); quarter++) {
      double value = dial.least() + quarter * (dial.most() - dial.least()) / 4;
      if (put(dial, value)) {
        return true;
      }
    }
    return false;
  }

  /** Strides that double while they help. */
  private void stride(Dial dial, double first) {
    double stride = 2 * first;
    while (!isOver() && !best.passes()) {
      OptionalDouble now = dials.value(dial, best);
      if (now.isEmpty() || !moved(dial, now.getAsDouble(), stride)) {
        return;
      }
      stride *= 2;
    }
  }

  private boolean moved(Dial dial, double from, double by) {
    double to = Math.max(dial.least(), Math.min(dial.most(), from + by));
    return put(dial, to);
  }

  private boolean put(Dial dial, double value) {
    double stepped = step.stepped(dial.kind(), value);
    if (stepped < dial.least() - BETTER || stepped > dial.most() + BETTER) {
      return false;
    }
    String text = step.text(dial.kind(), stepped);
    return !text.equals(dials.text(dial, best).orElse(""))
        && take(best.edits().with(dial.path(), text, reason()));
  }

  /** One step towards a better layout among those that pass. */
  private void makeCheaper() {
    price();
    if (best.estimate().isEmpty()) {
      done = true;
      return;
    }
    if (cheaper.isEmpty()) {
      cheaper = neighbours();
    }
    while (!cheaper.isEmpty() && !isOver()) {
      Edits edits = cheaper.remove(cheaper.size() - 1);
      Trial trial = bench.of(edits, 0);
      if (trial.passes()) {
        Trial priced = bench.priced(trial);
        if (ranking.isBetter(priced, best)) {
          best = priced;
          cheaper = neighbours();
          return;
        }
      }
    }
    done = cheaper.isEmpty();
  }

  /** Ways to another price, the most likely last. */
  private List<Edits> neighbours() {
    List<Edits> moves = new ArrayList<>();
    for (Dial dial : dialsOfBest()) {
      if (isOwnersWish(dial)) {
        continue;
      }
      if (dial.isChoice()) {
        String now = dials.text(dial, best).orElse("");
        dial.choices().stream()
            .filter(word -> !word.equals(now) && !isThinPlate(dial, word))
            .limit(MOST_CHOICES)
            .forEach(word -> moves.add(best.edits().with(dial.path(), word, CHEAPER)));
      } else {
        addSteps(moves, dial);
      }
    }
    addJoints(moves);
    Collections.shuffle(moves, random);
    addTakenBack(moves);
    return moves;
  }

  /** The travel that the owner asks for is changed for a check, never for the price. */
  private boolean isOwnersWish(Dial dial) {
    return dial.path().startsWith("chosen.ride") && !wishes.vary().containsKey(dial.path());
  }

  private void addSteps(List<Edits> moves, Dial dial) {
    OptionalDouble now = dials.value(dial, best);
    if (now.isEmpty()) {
      return;
    }
    double stride = step.stride(dial.kind(), 2);
    for (double value : new double[] {now.getAsDouble() - stride, now.getAsDouble() + stride}) {
      double stepped = step.stepped(dial.kind(), value);
      if (stepped >= dial.least() && stepped <= dial.most()) {
        moves.add(best.edits().with(dial.path(), step.text(dial.kind(), stepped), why()));
      }
    }
  }

  private String why() {
    return switch (wishes.goal()) {
      case PRICE -> CHEAPER;
      case HOURS -> "fewer hours";
      case MARGIN -> "more room to the limits";
      case RIDE -> "a softer ride";
    };
  }

  private void addJoints(List<Edits> moves) {
    Optional<JointPair> now = best.draft().flatMap(draft -> JointPair.of(draft.linkageSite()));
    if (now.isEmpty() || wishes.keeps(Mending.FRAME_END) || wishes.keeps(Mending.AXLE_END)) {
      return;
    }
    for (JointPair pair : JointPair.all(catalog)) {
      if (!pair.equals(now.get())) {
        moves.add(
            best.edits()
                .with(Mending.FRAME_END, pair.frame().key(), CHEAPER)
                .with(Mending.AXLE_END, pair.axle().key(), CHEAPER));
      }
    }
  }

  /** A change that is not needed is the first to go. */
  private void addTakenBack(List<Edits> moves) {
    for (Map.Entry<String, Edits.Edit> one : best.edits().byPath().entrySet()) {
      if (branch.edits().text(one.getKey()).isEmpty()) {
        moves.add(best.edits().without(one.getKey()));
      }
    }
  }
}

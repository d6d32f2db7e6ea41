package trammel.cutting.sheets;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;
import trammel.cutting.CuttingStatus;
import trammel.cutting.StockShortageException;
import trammel.cutting.bars.FillingCover;
import trammel.cutting.internal.Deadline;
import trammel.cutting.internal.PriceLadder;
import trammel.cutting.internal.Quantities;

/**
 * Finds a cheap set of sheets for rectangular parts, and a bound on how cheap one can be.
 *
 * <p>Plans are improved until the price meets the bound or the time is up.
 */
public final class SheetCutter {
  /** Time a problem is given unless the caller says otherwise. */
  public static final Duration USUAL_LIMIT = Duration.ofSeconds(1);

  /** Parts up to which a list is given its effort, however long that takes on a busy machine. */
  private static final int FEW_PARTS = 30;

  /** A second of a short list in seconds of counted steps; they are cheaper than others. */
  private static final int FEW_EFFORT = 2;

  /** The effort of a list of few parts. */
  private final Supplier<Deadline> few;

  /** The time or the effort of any other list. */
  private final Supplier<Deadline> many;

  /** Whether lists of few parts are also searched thoroughly and settled if they can be. */
  private final boolean thorough;

  /** A cutter with the effort of the usual time, counted: its plan is the same on any machine. */
  public SheetCutter() {
    this(effort(USUAL_LIMIT), Deadline.eachCounted(USUAL_LIMIT), true);
  }

  /**
   * @param limit longest time for one problem; what is best by then is handed over. A list of up to
   *     30 parts is given the effort of that time, counted, whatever else the machine does.
   */
  public SheetCutter(Duration limit) {
    this(effort(limit), Deadline.eachIn(limit), true);
  }

  /**
   * A cutter whose plan is the same on any machine.
   *
   * @param limit the effort counted is about what that time takes on a quiet processor
   */
  public static SheetCutter counted(Duration limit) {
    return new SheetCutter(effort(limit), Deadline.eachCounted(limit), true);
  }

  private static Supplier<Deadline> effort(Duration limit) {
    return Deadline.eachCounted(limit.multipliedBy(FEW_EFFORT));
  }

  private SheetCutter(Supplier<Deadline> few, Supplier<Deadline> many, boolean thorough) {
    this.few = few;
    this.many = many;
    this.thorough = thorough;
  }

  /**
   * A cutter whose answer does not depend on how fast the machine is.
   *
   * @param looks how often the search asks whether to stop; some hundreds do for a shop's job
   */
  public static SheetCutter withEffort(long looks) {
    Supplier<Deadline> deadline = Deadline.eachAfterLooks(looks);
    return new SheetCutter(deadline, deadline, false);
  }

  /**
   * Cuts the parts of the problem.
   *
   * @throws StockShortageException when the sheets do not hold all parts
   */
  public SheetCuttingPlan cut(SheetCuttingProblem problem) {
    boolean isShort = SheetCuttingProblem.count(problem.parts()) <= FEW_PARTS;
    Deadline deadline = isShort ? few.get() : many.get();
    SheetModel model = SheetModel.of(problem);
    if (model.types() == 0) {
      return new SheetCuttingPlan(
          List.of(),
          BigDecimal.ZERO,
          BigDecimal.ZERO,
          CuttingStatus.PROVEN_OPTIMAL,
          deadline.elapsedSeconds(),
          List.of());
    }
    Search search = new Search(model, problem.method(), deadline, thorough);
    search.run();
    if (search.best == null) {
      throw shortage(problem);
    }
    return new SheetPlanWriter(problem, model)
        .write(search.best, search.lowerBound, search.fills[0], deadline);
  }

  private static StockShortageException shortage(SheetCuttingProblem problem) {
    int parts = 0;
    double areaMm2 = 0;
    for (SheetPart part : problem.parts()) {
      parts += part.quantity();
      areaMm2 += part.widthMm() * part.heightMm() * part.quantity();
    }
    double sheetsMm2 = 0;
    for (SheetStock sheet : problem.stock()) {
      sheetsMm2 += sheet.widthMm() * sheet.heightMm() * sheet.available().orElse(0);
    }
    double side = Math.sqrt(areaMm2);
    return new StockShortageException(
        "the "
            + parts
            + " parts, as much plate as a square of "
            + Quantities.millimetres(side)
            + ", could not be placed on the sheets that are available, as much as a square of "
            + Quantities.millimetres(Math.sqrt(sheetsMm2))
            + ". Raise the number available, or add a sheet.");
  }

  /** One problem being solved. */
  private static final class Search {
    private static final long SEED = 20_260_102L;

    /** Sets of sheets looked at between the bound and the best plan. */
    private static final int MOST_SETS = 240;

    private static final int STEPS_PER_TURN = 24;
    private static final double QUICK_PART = 0.25;
    private static final double EXCHANGE_PART = 0.3;
    private static final double RECOMBINING_PART = 0.2;
    private static final double SETS_PART = 0.2;
    private static final double PROOF_PART = 0.5;
    private static final double NOISE = 1e-9;
    private static final double EXACT_PART = 0.3;
    private static final int FILLINGS_PER_ROUND = 60;
    private static final double COVER_PART = 0.4;
    private static final int MOST_FILLINGS = 6000;
    private static final double[] WEIGHTS = {1, 1.2, 1.5, 0.8};

    private final SheetModel model;
    private final Deadline deadline;
    private final CuttingMethod method;
    private final boolean thorough;

    /** Ways to fill a sheet; what a shear can cut can also be cut freely. */
    private final SheetFill[] fills;

    private final Random random = new Random(SEED);
    private final int[] remaining;
    private final double rate;
    private final FillingCover cover;
    private final List<Layout> remembered = new ArrayList<>();
    private PriceLadder ladder;
    private SheetSet best;
    private long bestPrice;
    private long lowerBound;

    Search(SheetModel model, CuttingMethod method, Deadline deadline, boolean thorough) {
      this.thorough = thorough;
      this.model = model;
      this.method = method;
      this.deadline = deadline;
      this.fills =
          method == CuttingMethod.GUILLOTINE
              ? new SheetFill[] {counted(new ShearFill(model))}
              : new SheetFill[] {counted(new SkylineFill(model)), counted(new ShearFill(model))};
      this.remaining = new int[model.types()];
      this.rate = rate(model);
      this.cover = new FillingCover(model.count, model.price, model.available);
    }

    private SheetFill counted(SheetFill fill) {
      return new CountedFill(fill, model, deadline);
    }

    private static double rate(SheetModel model) {
      double rate = Double.POSITIVE_INFINITY;
      for (int s = 0; s < model.sheets(); s++) {
        if (model.available[s] == SheetModel.UNLIMITED) {
          rate = Math.min(rate, (double) model.price[s] / model.sheetArea(s));
        }
      }
      return rate == Double.POSITIVE_INFINITY ? 0 : rate;
    }

    void run() {
      bestPrice = Long.MAX_VALUE;
      firstPlans();
      if (ladder == null) {
        bound();
      }
      if (isOver()) {
        return;
      }
      if (method == CuttingMethod.GUILLOTINE) {
        exactly();
      }
      if (thorough && best != null && PartRoom.takes(model)) {
        settleShortList();
      } else if (thorough && method == CuttingMethod.FREE) {
        amongAllFillings();
      }
      improveQuick(deadline.part(QUICK_PART));
      generate(deadline.part(QUICK_PART));
      recombineRemembered();
      trySets(deadline);
    }

    /** Quick plans from every order of the parts, until one meets the bound. */
    private void firstPlans() {
      for (int measure = 0; measure < Arrangement.MEASURES; measure++) {
        Arrangement arrangement = Arrangement.sorted(model, measure);
        if (isAlike(arrangement, measure)) {
          continue;
        }
        SheetFill[] known = new SheetFill[fills.length];
        for (int f = 0; f < fills.length; f++) {
          known[f] = new RememberedFill(fills[f], arrangement);
        }
        for (double weight : WEIGHTS) {
          for (SheetFill fill : known) {
            offer(quick(fill, arrangement, weight));
            if (best != null && ladder == null) {
              bound();
            }
            if (best != null && lowerBound >= bestPrice) {
              return;
            }
          }
        }
      }
    }

    /** Whether a measure before this one brought the parts into the same order. */
    private boolean isAlike(Arrangement arrangement, int measure) {
      for (int earlier = 0; earlier < measure; earlier++) {
        if (Arrays.equals(Arrangement.sorted(model, earlier).order, arrangement.order)) {
          return true;
        }
      }
      return false;
    }

    private boolean remember(int sheet, Layout layout, int most) {
      if (cover.size() >= most || cover.add(sheet, counts(layout)) < 0) {
        return false;
      }
      remembered.add(layout.copy());
      return true;
    }

    private int[] counts(Layout layout) {
      int[] counts = new int[model.types()];
      for (int i = 0; i < layout.parts; i++) {
        counts[layout.type[i]]++;
      }
      return counts;
    }

    /** Fills sheets with what is worth most by the relaxation, again and again. */
    private void generate(Deadline end) {
      Layout trial = new Layout();
      boolean found = true;
      while (best != null && found && !isOver() && !end.isPast()) {
        found = false;
        double[] worth = cover.worth(bestPrice, deadline);
        double relaxed = 0;
        for (int t = 0; t < worth.length; t++) {
          relaxed += worth[t] * model.count[t];
        }
        // A sheet that loses more than the gap is in no better plan of the sheets seen so far.
        double mostLoss = Math.max(0, bestPrice - relaxed);
        for (int i = 0; i < FILLINGS_PER_ROUND && !end.isPast(); i++) {
          Arrangement arrangement = Arrangement.byWorth(model, worth, random);
          SheetFill fill = fills[random.nextInt(fills.length)];
          for (int s = 0; s < model.sheets(); s++) {
            int[] rest = model.count.clone();
            fill.fill(model.sheetWidth[s], model.sheetHeight[s], arrangement, rest, trial);
            double gain = -model.price[s];
            for (int p = 0; p < trial.parts; p++) {
              gain += worth[trial.type[p]];
            }
            if (gain > -mostLoss) {
              found |= remember(s, trial, MOST_FILLINGS);
            }
          }
        }
      }
    }

    /** Exchanges parts between sheets, and settles the list where that can be done. */
    private void settleShortList() {
      boolean isFree = method == CuttingMethod.FREE;
      PartRoom room = new PartRoom(model, fills, isFree, random, deadline);
      exchange(room, deadline.part(EXCHANGE_PART));
      recombine(room, deadline.part(RECOMBINING_PART));
      trySets(deadline.part(SETS_PART));
      if (isFree && !isOver()) {
        prove(room, deadline.part(PROOF_PART));
      }
      exchange(room, deadline.part(EXCHANGE_PART));
      recombine(room, deadline.part(RECOMBINING_PART));
    }

    private void recombine(PartRoom room, Deadline end) {
      if (!isOver()) {
        new SheetProof(model, room, end).recombined(bestPrice).ifPresent(this::offer);
      }
    }

    private void exchange(PartRoom room, Deadline end) {
      if (!isOver()) {
        offer(new SheetExchange(model, room, random, end).run(best, lowerBound));
      }
    }

    private void prove(PartRoom room, Deadline end) {
      SheetProof proof = new SheetProof(model, room, end);
      proof.cheaperThan(bestPrice).ifPresent(this::offer);
      long bound = (long) Math.ceil(proof.bound() * (1 - NOISE) - NOISE);
      lowerBound = Math.max(lowerBound, Math.min(bestPrice, ladder.atLeast(bound)));
      if (proof.isProven()) {
        lowerBound = bestPrice;
      }
    }

    /** Looks for a cheaper plan among all sheets filled so far (set covering). */
    private void recombineRemembered() {
      if (best == null || isOver()) {
        return;
      }
      Optional<int[]> cheaper = cover.cheaperThan(bestPrice, deadline.part(COVER_PART));
      if (cheaper.isPresent()) {
        SheetSet set = new SheetSet();
        int[] needed = model.count.clone();
        for (int number : cheaper.get()) {
          set.add(model, cover.stock(number), remembered.get(number).without(needed));
        }
        offer(set);
      }
    }

    private boolean isOver() {
      return lowerBound >= bestPrice || deadline.isPast();
    }

    private void bound() {
      long highest = best == null ? Long.MAX_VALUE / 4 : bestPrice;
      long[] area = new long[model.sheets()];
      for (int s = 0; s < area.length; s++) {
        area[s] =
            method == CuttingMethod.GUILLOTINE
                ? new ShearFullness(model).mostArea(s)
                : model.sheetArea(s);
      }
      ladder =
          new PriceLadder(area, model.price, model.available, model.area(model.count), highest);
      double areas = new AreaBound(model).best(model.count);
      lowerBound = Math.min(highest, ladder.atLeast(Math.max(0, (long) Math.ceil(areas - NOISE))));
    }

    private void offer(SheetSet set) {
      if (set != null && set.price < bestPrice) {
        best = set;
        bestPrice = set.price;
      }
    }

    /** Settles a list of which few parts fit on each sheet. */
    private void amongAllFillings() {
      AllFillings all = new AllFillings(model, deadline.part(EXACT_PART));
      all.cheaperThan(bestPrice).ifPresent(this::offer);
      if (best != null && all.isProven()) {
        lowerBound = bestPrice;
      }
    }

    private void exactly() {
      ShearSearch exact = ShearSearch.of(model);
      if (exact != null) {
        SheetSet optimum = exact.cheapest();
        offer(optimum);
        if (optimum != null) {
          lowerBound = bestPrice;
        }
      }
    }

    /** Sheet after sheet, each time the one that promises the lowest total. */
    private SheetSet quick(SheetFill fill, Arrangement arrangement, double weight) {
      int[] left = model.available.clone();
      System.arraycopy(model.count, 0, remaining, 0, remaining.length);
      long area = model.area(remaining);
      SheetSet set = new SheetSet();
      Layout trial = new Layout();
      while (area > 0) {
        double bestScore = Double.POSITIVE_INFINITY;
        int chosen = -1;
        Layout chosenLayout = null;
        int[] chosenRest = null;
        long chosenArea = 0;
        for (int s = 0; s < model.sheets(); s++) {
          if (left[s] == 0) {
            continue;
          }
          int[] rest = remaining.clone();
          long placed =
              fill.fill(model.sheetWidth[s], model.sheetHeight[s], arrangement, rest, trial);
          if (placed > 0) {
            remember(s, trial, MOST_FILLINGS / 2);
          }
          double score = model.price[s] + rate * weight * (area - placed);
          if (placed > 0 && score < bestScore) {
            bestScore = score;
            chosen = s;
            chosenLayout = trial.copy();
            chosenRest = rest;
            chosenArea = placed;
          }
        }
        if (chosen < 0 || set.price > bestPrice) {
          return null;
        }
        set.add(model, chosen, chosenLayout);
        System.arraycopy(chosenRest, 0, remaining, 0, remaining.length);
        area -= chosenArea;
        left[chosen] -= left[chosen] == SheetModel.UNLIMITED ? 0 : 1;
      }
      return set;
    }

    private void improveQuick(Deadline end) {
      Arrangement current = Arrangement.sorted(model, 0);
      Arrangement trial = current.copy();
      SheetFill fill = fills[0];
      long currentPrice = Long.MAX_VALUE;
      int since = 0;
      while (!isOver() && !end.isPast()) {
        if (since > 60) {
          since = 0;
          currentPrice = Long.MAX_VALUE;
          fill = fills[random.nextInt(fills.length)];
          trial.takeFrom(Arrangement.sorted(model, random.nextInt(Arrangement.MEASURES)));
        } else {
          trial.takeFrom(current);
        }
        int changes = 1 + random.nextInt(4);
        for (int i = 0; i < changes; i++) {
          trial.change(random, true);
        }
        SheetSet set = quick(fill, trial, WEIGHTS[random.nextInt(WEIGHTS.length)]);
        since++;
        if (set != null && set.price <= currentPrice) {
          since = set.price < currentPrice ? 0 : since;
          currentPrice = set.price;
          current.takeFrom(trial);
          offer(set);
        }
      }
    }

    /** Works through the sets of sheets that cost less than the best plan, in turns. */
    private void trySets(Deadline end) {
      List<SheetTrials> open = isOver() ? List.of() : openSets();
      while (!isOver() && !open.isEmpty()) {
        boolean found = false;
        for (SheetTrials trials : open) {
          if (isOver() || end.isPast()) {
            return;
          }
          if (trials.price() < bestPrice && turn(trials)) {
            found = true;
          }
        }
        if (found) {
          open = openSets();
        }
      }
    }

    private boolean turn(SheetTrials trials) {
      for (int i = 0; i < STEPS_PER_TURN; i++) {
        if (trials.step()) {
          offer(trials.result());
          return true;
        }
      }
      return false;
    }

    /** The dearest sets first: they are the easiest to fill. */
    private List<SheetTrials> openSets() {
      List<int[]> sets = new ArrayList<>();
      long needed = model.area(model.count);
      long price = best == null ? Long.MIN_VALUE : ladder.below(bestPrice);
      int looked = 0;
      while (price >= lowerBound && sets.size() < MOST_SETS && looked++ < 2000) {
        sets.addAll(SheetTrials.setsAt(model, price, needed, MOST_SETS - sets.size()));
        price = ladder.below(price);
      }
      sets.sort(
          new Comparator<int[]>() {
            @Override
            public int compare(int[] a, int[] b) {
              return Long.compare(area(b), area(a));
            }
          });
      List<SheetTrials> trials = new ArrayList<>();
      for (int[] set : sets) {
        trials.add(new SheetTrials(model, fills, random, set));
      }
      return trials;
    }

    private long area(int[] set) {
      long area = 0;
      for (int s : set) {
        area += model.sheetArea(s);
      }
      return area;
    }
  }
}

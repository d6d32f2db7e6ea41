package trammel.planning.draft;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.material.EndFitting;
import trammel.engine.checks.AnalysisSettings;
import trammel.engine.checks.Check;
import trammel.engine.checks.Judge;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.checks.StandardChecks;
import trammel.engine.checks.Verdict;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Joint;
import trammel.engine.layout.Layout;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.PlanCheck;
import trammel.planning.extension.Addition;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.LimitedCheck;
import trammel.planning.extension.PluginFaultException;
import trammel.planning.extension.Site;
import trammel.planning.extension.SpringMount;
import trammel.planning.extension.SpringSet;
import trammel.planning.job.Job;
import trammel.reading.fields.FieldReader;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.Problem;
import trammel.reading.tree.Problems;

/** Draws the layout of a job with the linkages, spring mounts and the catalog that are there. */
public final class Drafting {
  private static final String JOINT_RATING = "joint-rating";

  private final Extensions extensions;
  private final Catalog catalog;

  /**
   * @param extensions the installed linkages, spring mounts and additions
   * @param catalog what can be bought and done, and the limits
   */
  public Drafting(Extensions extensions, Catalog catalog) {
    this.extensions = extensions;
    this.catalog = catalog;
  }

  /**
   * The job with its layout.
   *
   * @param job the job as read
   * @param shown the units in which reasons and messages are written
   * @throws BadInputException if the job names a linkage, an addition, an option, a part or a limit
   *     that does not exist, or if its measurements contradict each other
   * @throws UnworkableLayoutException if the vehicle leaves no room for what was chosen
   */
  public Draft draft(Job job, UnitSystem shown) {
    AxleLinkage linkage =
        extensions.linkage(job.chosen().linkage(), job.source().locationOf("chosen.linkage"));
    LinkageWays ways = new LinkageWays(job.chosen().linkageOptions(), linkage, catalog);
    Map<String, Phrase> refusals = new LinkedHashMap<>();
    Optional<Way> first = Optional.empty();
    for (ObjectNode options : ways.mountings()) {
      try {
        Way way = way(job, shown, options);
        if (way.isClear()) {
          return strongEnough(way, ways);
        }
        first = first.isPresent() ? first : Optional.of(way);
      } catch (UnworkableLayoutException noRoom) {
        refusals.put(LinkageWays.mounting(options), noRoom.reason());
      }
    }
    if (first.isPresent()) {
      return strongEnough(first.get(), ways);
    }
    throw new UnworkableLayoutException(
        Phrase.of(
            "{}: this layout does not fit the vehicle. {}",
            job.source().file(),
            LinkageWays.refusal(refusals)));
  }

  /**
   * What is drawn with one choice of what the job leaves open.
   *
   * @param options the linkage's options
   * @param isClear whether the springs found a place clear of the brackets beside them
   */
  private record Way(ObjectNode options, Draft draft, boolean isClear) {}

  /** The draft, or the first of the ways with stronger joints where its own would be overloaded. */
  private Draft strongEnough(Way way, LinkageWays ways) {
    Draft drawn = way.draft();
    List<ObjectNode> stronger = ways.strongerJoints(way.options(), drawn.linkageSite());
    if (stronger.isEmpty() || !isOverloaded(drawn)) {
      return drawn;
    }
    for (ObjectNode options : stronger) {
      try {
        Draft other = way(drawn.job(), drawn.linkageSite().units(), options).draft();
        if (!isOverloaded(other)) {
          return other;
        }
      } catch (UnworkableLayoutException noRoomForThese) {
        // Wider joints may find no room; the next may be narrower.
        continue;
      }
    }
    return drawn;
  }

  private static boolean isOverloaded(Draft draft) {
    LayoutAnalysis analysis = new LayoutAnalysis(draft.layout(), draft.judge().settings());
    return draft.judge().checks().stream()
        .filter(check -> check.id().equals(JOINT_RATING))
        .anyMatch(
            check ->
                draft.judge().find(check, analysis).stream()
                    .anyMatch(found -> found.verdict() == Verdict.STOP));
  }

  private Way way(Job job, UnitSystem shown, ObjectNode chosenOptions) {
    UnitSystem units = job.header().units();
    AxleLinkage linkage =
        new PlannedLinkage(
            extensions.linkage(job.chosen().linkage(), job.source().locationOf("chosen.linkage")));
    SpringMount spring =
        extensions.spring(job.chosen().spring(), job.source().locationOf("chosen.spring"));
    FieldValues linkageOptions =
        FieldReader.readAll(chosenOptions, linkage.options(catalog), units);
    FieldValues springOptions =
        FieldReader.readAll(job.chosen().springOptions(), spring.options(catalog), units);
    Chassis chassis = onItsDriveline(job, chassis(job));
    Site linkageSite = new Site(chassis, linkageOptions, catalog, shown);
    Site springSite = new Site(chassis, springOptions, catalog, shown);
    List<ChosenAddition> additions = additions(job, chassis, shown);
    JobWork planning = new JobWork(linkage, spring, linkageSite, springSite, additions, job);
    List<LimitedCheck> own = ownChecks(linkage, spring, additions);
    List<Check> checks = checks(job, linkage, linkageSite, planning, additions, own);
    Map<String, Limit> limits = limits(job, checks, own);
    Proposed proposed = proposed(job, linkage, spring, linkageSite, springSite);
    Layout notched =
        new NotchRule(limits, catalog, job.chosen().railWork().notch()).notched(proposed.layout());
    Judge judge = new Judge(checks, limits, settings(job));
    Draft draft =
        new Draft(
            job,
            linkage,
            spring,
            linkageSite,
            springSite,
            additions,
            with(additions, notched),
            judge,
            planning);
    return new Way(chosenOptions, draft, proposed.isClear());
  }

  /** The layout with what the additions put between frame and axle. */
  private static Layout with(List<ChosenAddition> additions, Layout notched) {
    Layout layout = notched;
    for (ChosenAddition one : additions) {
      layout = one.addition().onto(layout, one.site().at(layout.chassis()));
    }
    return layout;
  }

  /**
   * A transmission whose angle the job leaves open is shimmed where a joint could not stand it, a
   * shaft that would whirl is made anew.
   */
  private Chassis onItsDriveline(Job job, Chassis found) {
    boolean isOpen =
        job.chosen().transmissionAngleRad().isEmpty() && job.chosen().pinionAngleRad().isEmpty();
    AnalysisSettings settings = settings(job);
    Chassis shimmed = isOpen ? TransmissionShim.shimmed(found, catalog.limits(), settings) : found;
    return NewShaft.fitted(job, shimmed, catalog, settings);
  }

  private List<ChosenAddition> additions(Job job, Chassis chassis, UnitSystem shown) {
    List<ChosenAddition> additions = new ArrayList<>();
    for (Map.Entry<String, ObjectNode> asked : job.chosen().additions().entrySet()) {
      String path = "chosen.additions." + asked.getKey();
      Addition addition = extensions.addition(asked.getKey(), job.source().locationOf(path));
      FieldValues options =
          FieldReader.readAll(asked.getValue(), addition.options(catalog), job.header().units());
      additions.add(new ChosenAddition(addition, new Site(chassis, options, catalog, shown)));
    }
    return additions;
  }

  /** The domain types say what is impossible about these measurements and what to do. */
  private static Chassis chassis(Job job) {
    try {
      return new MeasuredChassis(job).chassis();
    } catch (IllegalArgumentException impossible) {
      throw new BadInputException(
          List.of(
              Problem.error(
                  job.source().locationOf("measured"),
                  "measurements that contradict each other",
                  "those of one vehicle",
                  impossible.getMessage())));
    }
  }

  private AnalysisSettings settings(Job job) {
    List<Joint> joints = new ArrayList<>(catalog.ends().size());
    for (EndFitting end : catalog.ends().values()) {
      joints.add(end.joint());
    }
    AnalysisSettings settings = catalog.analysis().withJoints(joints);
    return job.chosen().topSpeedMPerS().map(settings::atSpeed).orElse(settings);
  }

  /** A layout without notch and additions, and whether its springs are clear of brackets. */
  private record Proposed(Layout layout, boolean isClear) {}

  private static Proposed proposed(
      Job job, AxleLinkage linkage, SpringMount spring, Site linkageSite, Site springSite) {
    PickUpOverrides overrides = new PickUpOverrides(job.chosen().pickups());
    AxleGuide moved = overrides.over(linkage.propose(linkageSite));
    AxleGuide guide = linkage.follow(linkageSite, moved);
    SpringSet springs = overrides.over(spring.propose(springSite, guide));
    Problems problems = new Problems();
    overrides.refuseUnknown(guide.bars(), springs, problems);
    problems.throwIfErrors();
    return new Proposed(
        new Layout(linkageSite.chassis(), guide, springs.springs(), springs.shocks()),
        springs.isClear());
  }

  /** The checks that the plugins bring, those of the linkage first. */
  private static List<LimitedCheck> ownChecks(
      AxleLinkage linkage, SpringMount spring, List<ChosenAddition> additions) {
    List<LimitedCheck> own = new ArrayList<>(linkage.checks());
    own.addAll(spring.checks());
    for (ChosenAddition one : additions) {
      own.addAll(one.addition().checks(one.site()));
    }
    return own;
  }

  /** First whether the measurements agree, then what was made of them. */
  private List<Check> checks(
      Job job,
      AxleLinkage linkage,
      Site linkageSite,
      JobWork planning,
      List<ChosenAddition> additions,
      List<LimitedCheck> own) {
    List<Check> checks = new ArrayList<>(new MeasurementChecks(job.measured()).all());
    checks.addAll(StandardChecks.all());
    checks.add(RatedLoad.ofTyre(job.measured().tyre()));
    checks.add(RatedLoad.ofAxle(job.measured().axle()));
    MeasuredChassis measured = new MeasuredChassis(job);
    checks.add(
        new HoseReach(
            job.measured().hoses(),
            job.measured().hoses().stream().map(hose -> measured.atRide(hose.onFrame())).toList()));
    checks.add(new HitchLoad(job.measured().hitch()));
    checks.add(new FrontShaftAngle(measured.frontShaft()));
    checks.add(new FrontShaftSpeed(job.measured().driveshaft(), measured.frontShaft()));
    BracketTabs tabs = new BracketTabs();
    BracketWelds welds = new BracketWelds(linkage, linkageSite);
    checks.add(tabs);
    checks.add(welds);
    checks.add(new WeldRanking(welds));
    checks.add(new WorkUnderBlows(PlanCheck.TABS_HARD, tabs));
    checks.add(new WorkUnderBlows(PlanCheck.WELDS_HARD, welds));
    checks.add(new DroopEnd(additions));
    MountStrength mounts = MountStrength.ofSteel(planning);
    MountStrength mountWelds = MountStrength.ofWelds(planning);
    RailTwist twist = new RailTwist(planning, job.measured().rails());
    checks.add(mounts);
    checks.add(new WorkUnderBlows(PlanCheck.MOUNTS_HARD, mounts));
    checks.add(mountWelds);
    checks.add(new WorkUnderBlows(PlanCheck.MOUNT_WELDS_HARD, mountWelds));
    checks.add(twist);
    checks.add(new WorkUnderBlows(PlanCheck.RAIL_TWIST_HARD, twist));
    checks.add(new WorkAtFullLoad(PlanCheck.MOUNTS_LOADED, mounts));
    checks.add(new WorkAtFullLoad(PlanCheck.MOUNT_WELDS_LOADED, mountWelds));
    checks.add(new WorkAtFullLoad(PlanCheck.RAIL_TWIST_LOADED, twist));
    checks.add(new CanBeMade(planning));
    checks.add(new PartsApart(planning, catalog));
    for (LimitedCheck limited : own) {
      checks.add(limited.check());
    }
    return declined(checks, linkage);
  }

  /** The checks, those that the linkage declines without a value and with its reason. */
  private static List<Check> declined(List<Check> checks, AxleLinkage linkage) {
    Map<String, String> reasons = linkage.declined();
    for (String id : reasons.keySet()) {
      if (checks.stream().noneMatch(check -> check.id().equals(id))) {
        throw new PluginFaultException(
            linkage.id(),
            "Linkage "
                + linkage.id()
                + " declines the check '"
                + id
                + "', which there is not. Its plugin must be mended.",
            null);
      }
    }
    return checks.stream()
        .map(
            check ->
                reasons.containsKey(check.id())
                    ? new DeclinedCheck(check, reasons.get(check.id()))
                    : check)
        .toList();
  }

  private Map<String, Limit> limits(Job job, List<Check> checks, List<LimitedCheck> own) {
    Map<String, Limit> limits = new LinkedHashMap<>(catalog.limits());
    for (LimitedCheck limited : own) {
      limits.put(limited.check().id(), limited.limit());
    }
    return new LimitOverrides(checks, job.header().units()).over(limits, job.terms().limits());
  }
}

package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.engine.layout.AxleMotion;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Travel;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.LinkReading;
import trammel.engine.motion.PoseResult;

/**
 * A layout set in motion: its poses through the travel and its figures at ride, each worked out
 * when first asked for. Not for use by several threads at once.
 */
public final class LayoutAnalysis {
  /** Stations of each wheel's travel in the envelope. */
  private static final int WHEEL_STATIONS = 5;

  /** Stations of the pure heave sweep. */
  private static final int HEAVE_STATIONS = 13;

  private final Layout layout;
  private final AnalysisSettings settings;
  private final AxleMotion motion;
  private final LayoutAnalysis usual;
  private final Layout built;
  private RideState ride;
  private BarForces barForces;
  private MountForces mountForces;
  private Clearances clearances;
  private Optional<LayoutAnalysis> fullLoad;
  private Optional<LayoutAnalysis> underBlows;
  private List<AxlePose> heaveSweep;
  private List<AxlePose> envelope;
  private final List<List<LinkReading>> linkReadings = new ArrayList<>();
  private double reachedShare = 1;

  /**
   * @param layout the layout
   * @param settings what the analysis assumes
   * @throws IllegalArgumentException if the bars do not hold the axle
   */
  public LayoutAnalysis(Layout layout, AnalysisSettings settings) {
    this.layout = layout;
    this.settings = settings;
    motion = layout.motion();
    usual = null;
    built = layout;
  }

  /** A layout at full load: it is built as it is empty. */
  private LayoutAnalysis(Layout loaded, LayoutAnalysis empty) {
    layout = loaded;
    settings = empty.settings;
    motion = loaded.motion();
    usual = null;
    built = empty.built;
  }

  /** The same layout under blows: it moves as it does under the usual loads. */
  private LayoutAnalysis(LayoutAnalysis usual) {
    layout = usual.layout;
    settings = usual.settings.underBlows();
    motion = usual.motion;
    built = usual.built;
    this.usual = usual;
  }

  /** The layout that is analysed. */
  public Layout layout() {
    return layout;
  }

  /** The layout that is built, for which work is planned: at full load the empty one. */
  public Layout built() {
    return built;
  }

  /** What the analysis assumes. */
  public AnalysisSettings settings() {
    return settings;
  }

  /** How the axle moves. */
  public AxleMotion motion() {
    return motion;
  }

  /** The figures at ride height. */
  public RideState ride() {
    if (usual != null) {
      return usual.ride();
    }
    if (ride == null) {
      ride = RideState.of(layout, motion);
    }
    return ride;
  }

  /** The same with the vehicle at full load; empty where nothing is said of what it carries. */
  public Optional<LayoutAnalysis> fullLoad() {
    if (fullLoad == null) {
      fullLoad =
          layout.chassis().masses().payload().isNone()
              ? Optional.empty()
              : Optional.of(new LayoutAnalysis(FullLoad.of(this), this));
    }
    return fullLoad;
  }

  /** The same under hard blows in place of the usual load cases; empty where there are none. */
  public Optional<LayoutAnalysis> underBlows() {
    if (underBlows == null) {
      underBlows =
          settings.hardCases().isEmpty() ? Optional.empty() : Optional.of(new LayoutAnalysis(this));
    }
    return underBlows;
  }

  /** Whether its load cases are hard blows. */
  public boolean isUnderBlows() {
    return usual != null;
  }

  /** The largest force that each spring, shock and bar puts into its mounts. */
  public MountForces mountForces() {
    if (mountForces == null) {
      mountForces = new MountForces(this);
    }
    return mountForces;
  }

  /** The force in every bar at ride, under every load case. */
  public BarForces barForces() {
    if (barForces == null) {
      barForces = BarForces.of(layout, motion, ride().roll(), settings.loadCases());
    }
    return barForces;
  }

  /** The least gaps over the travel. */
  Clearances clearances() {
    if (clearances == null) {
      clearances = new Clearances(this);
    }
    return clearances;
  }

  /**
   * Where the axle is.
   *
   * @param heaveMm rise of its middle from ride (mm)
   * @param rollRad elevation of its line, left wheel up positive (rad)
   * @return the pose; empty when the bars do not let it get there
   */
  public Optional<AxlePose> poseAt(double heaveMm, double rollRad) {
    return motion.solve(heaveMm, rollRad).found();
  }

  /** Poses in pure heave from full droop to full bump; those out of reach are left out. */
  public List<AxlePose> heaveSweep() {
    if (heaveSweep == null) {
      Travel travel = layout.chassis().travel();
      List<AxlePose> poses = new ArrayList<>(HEAVE_STATIONS);
      for (int i = 0; i < HEAVE_STATIONS; i++) {
        double share = i / (HEAVE_STATIONS - 1.0);
        double heaveMm = -travel.droopMm() + share * (travel.bumpMm() + travel.droopMm());
        Optional<AxlePose> pose = poseAt(heaveMm, 0);
        if (pose.isPresent()) {
          poses.add(pose.get());
        }
      }
      heaveSweep = List.copyOf(poses);
    }
    return heaveSweep;
  }

  /**
   * Poses with each wheel anywhere between full droop and full bump, one-wheel bumps included;
   * those out of reach are left out.
   */
  public List<AxlePose> envelope() {
    if (usual != null) {
      return usual.envelope();
    }
    if (envelope == null) {
      List<AxlePose> poses = new ArrayList<>(WHEEL_STATIONS * WHEEL_STATIONS);
      for (int left = 0; left < WHEEL_STATIONS; left++) {
        for (int right = 0; right < WHEEL_STATIONS; right++) {
          addPose(poses, wheelTravelMm(left), wheelTravelMm(right));
        }
      }
      envelope = List.copyOf(poses);
    }
    return envelope;
  }

  /**
   * What the bars do at a pose of the envelope, in the order of the layout's bars.
   *
   * @param pose index of the pose in the envelope
   */
  List<LinkReading> linkReadings(int pose) {
    while (linkReadings.size() <= pose) {
      linkReadings.add(motion.readings(envelope().get(linkReadings.size())));
    }
    return linkReadings.get(pose);
  }

  private void addPose(List<AxlePose> poses, double leftMm, double rightMm) {
    double sinRoll = (leftMm - rightMm) / layout.chassis().axle().trackMm();
    double rollRad = Math.asin(Math.max(-1, Math.min(1, sinRoll)));
    PoseResult result = motion.solve((leftMm + rightMm) / 2, rollRad);
    if (result instanceof PoseResult.Solved solved) {
      poses.add(solved.pose());
    } else if (result instanceof PoseResult.OutOfReach out) {
      reachedShare = Math.min(reachedShare, out.fraction());
    } else if (result instanceof PoseResult.NotConverged lost) {
      reachedShare = Math.min(reachedShare, lost.fraction());
    }
  }

  private double wheelTravelMm(int station) {
    Travel travel = layout.chassis().travel();
    double share = station / (WHEEL_STATIONS - 1.0);
    return -travel.droopMm() + share * (travel.bumpMm() + travel.droopMm());
  }

  /** Share of the wanted travel that the bars let the axle reach, the worst direction, 0..1. */
  public double reachedShare() {
    if (usual != null) {
      return usual.reachedShare();
    }
    envelope();
    return reachedShare;
  }

  /** A pose in words that a fabricator can set up. */
  public String describe(AxlePose pose) {
    Chassis chassis = layout.chassis();
    double halfMm = chassis.axle().trackMm() / 2 * Math.sin(pose.rollRad());
    String left = wheel(pose.heaveMm() + halfMm);
    String right = wheel(pose.heaveMm() - halfMm);
    return left.equals(right) ? "both wheels " + left : "left wheel " + left + ", right " + right;
  }

  private String wheel(double travelMm) {
    Travel travel = layout.chassis().travel();
    double near = 0.02 * (travel.bumpMm() + travel.droopMm());
    if (travelMm > travel.bumpMm() - near) {
      return "at full bump";
    }
    if (travelMm < -travel.droopMm() + near) {
      return "at full droop";
    }
    if (Math.abs(travelMm) < near) {
      return "at ride";
    }
    return travelMm > 0 ? "part way up" : "part way down";
  }
}

package trammel.engine.checks;

import java.util.List;
import java.util.Optional;

/**
 * Room that is left between axle tube and rail when both wheels meet their bump stops at speed with
 * the vehicle at full load: there is more to catch, and coils have sagged towards the stop.
 */
record LoadedStopRoom(String id, String title) implements Check {

  @Override
  public Measure measure() {
    return Measure.LENGTH;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    Optional<LayoutAnalysis> loaded = analysis.fullLoad();
    return loaded.isEmpty()
        ? new Reading.NotApplicable("no load is given")
        : BumpStopRoom.reading(BumpStopRoom.Squeeze.atFullLoad(analysis, loaded.get()));
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return List.of(new Adjustment.ChangeRate(), new Adjustment.ChangeBump());
  }

  @Override
  public String advice() {
    return "Fit a taller or stiffer bump stop, stiffer springs or air springs, or carry less.";
  }
}

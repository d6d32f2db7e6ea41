package trammel.app.commands;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the value of {@code --units}. */
final class DisplayUnitsConverter implements ITypeConverter<DisplayUnits> {
  @Override
  public DisplayUnits convert(String value) {
    return switch (value) {
      case "us" -> DisplayUnits.US;
      case "metric" -> DisplayUnits.METRIC;
      default ->
          throw new TypeConversionException("'" + value + "' is no unit system; give us or metric");
    };
  }
}

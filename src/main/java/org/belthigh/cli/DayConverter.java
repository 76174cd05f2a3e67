package org.belthigh.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.belthigh.intake.Intake;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A day as people write it on a command line: {@code 2027-04-05}, {@code April 5 2027}, {@code 5
 * abr 2027}, or numbers that can mean one day only. {@code 4/5/2027} is asked about, never guessed.
 */
final class DayConverter implements ITypeConverter<LocalDate> {
  private static final String ALLOWED = "a day is written year-month-day, such as 2027-04-05.";

  @Override
  public LocalDate convert(String text) {
    List<LocalDate> days = Intake.days(text.strip());
    if (days.isEmpty()) {
      throw new TypeConversionException("'" + text + "' is no day of the calendar; " + ALLOWED);
    }
    if (days.size() > 1) {
      throw new TypeConversionException(
          "'"
              + text
              + "' can be two days; "
              + ALLOWED
              + "\nMaybe "
              + days.stream().map(LocalDate::toString).collect(Collectors.joining(", or "))
              + ".");
    }
    return days.get(0);
  }
}

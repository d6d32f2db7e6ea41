package trammel.planning.order;

import java.time.DayOfWeek;
import java.time.LocalDate;

/** Counts days from Monday to Friday. Holidays are not known: leave a day or two. */
public final class WorkingDays {
  private WorkingDays() {}

  /**
   * The day so many working days after another.
   *
   * @param days 0 or more; 0 is the day itself
   */
  public static LocalDate after(LocalDate from, int days) {
    LocalDate day = from;
    int left = days;
    while (left > 0) {
      day = day.plusDays(1);
      if (isWorkingDay(day)) {
        left--;
      }
    }
    return day;
  }

  /**
   * The last day on which something must be ordered to be there the working day before another.
   *
   * @param leadDays working days from order to delivery, 0 or more
   */
  public static LocalDate orderBy(LocalDate start, int leadDays) {
    LocalDate day = start;
    int left = leadDays + 1;
    while (left > 0) {
      day = day.minusDays(1);
      if (isWorkingDay(day)) {
        left--;
      }
    }
    return day;
  }

  private static boolean isWorkingDay(LocalDate day) {
    return day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY;
  }
}

package org.midlateral.measurement.privacy;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The names that are filed are those of the Unicode Common Locale Data Repository in the JDK. */
class CalendarNamesTest {

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "es"})
  void monthsAreThoseOfTheLanguage(String language) {
    CalendarNames names = CalendarNames.all().get(language);

    assertThat(names.months()).isEqualTo(months(language, TextStyle.FULL));
    assertThat(names.shortMonths()).isEqualTo(months(language, TextStyle.SHORT));
  }

  private static List<String> months(String language, TextStyle style) {
    return Arrays.stream(Month.values())
        .map(month -> month.getDisplayName(style, new Locale(language)).replace(".", ""))
        .toList();
  }

  @Test
  void daysAreEnglish() {
    List<String> days =
        Arrays.stream(DayOfWeek.values())
            .map(day -> day.getDisplayName(TextStyle.FULL, Locale.ENGLISH))
            .toList();

    assertThat(CalendarNames.all().get("en").days()).isEqualTo(days);
  }
}

package org.belthigh.heat;

/**
 * The heat index of the US National Weather Service, from temperature and relative humidity.
 *
 * <p>Source: {@code s32}, the regression of Rothfusz with the two adjustments and the simple
 * formula below 80. All degrees are Fahrenheit, humidity is percent, 0 to 100. It holds for shade
 * and light wind, and is no wet-bulb globe temperature.
 */
public final class HeatIndex {
  private static final double HOT = 80;

  private HeatIndex() {}

  /** The heat index as the service reports it: simple where it is not hot, else adjusted. */
  public static double of(double temperature, double humidity) {
    double simple = simple(temperature, humidity);
    return (simple + temperature) / 2 < HOT ? simple : adjusted(temperature, humidity);
  }

  /** The simple formula, for weather that is not hot. */
  public static double simple(double t, double rh) {
    return 0.5 * (t + 61.0 + (t - 68.0) * 1.2 + rh * 0.094);
  }

  /** The regression alone, which the printed chart shows. */
  public static double regression(double t, double rh) {
    return -42.379
        + 2.04901523 * t
        + 10.14333127 * rh
        - 0.22475541 * t * rh
        - 0.00683783 * t * t
        - 0.05481717 * rh * rh
        + 0.00122874 * t * t * rh
        + 0.00085282 * t * rh * rh
        - 0.00000199 * t * t * rh * rh;
  }

  /** The regression, lower in very dry air and higher in very damp air. */
  public static double adjusted(double t, double rh) {
    double index = regression(t, rh);
    if (rh < 13 && t >= 80 && t <= 112) {
      return index - (13 - rh) / 4 * Math.sqrt((17 - Math.abs(t - 95)) / 17);
    }
    if (rh > 85 && t >= 80 && t <= 87) {
      return index + (rh - 85) / 10 * ((87 - t) / 5);
    }
    return index;
  }

  /** Fahrenheit of {@code celsius}. */
  public static double fahrenheit(double celsius) {
    return celsius * 9 / 5 + 32;
  }
}

package zonewright.season;

import java.util.ArrayList;
import java.util.List;
import zonewright.balance.DaysOfWeather;
import zonewright.balance.RootZone;
import zonewright.balance.SoilDays;
import zonewright.balance.WaterGiven;

/**
 * A rule judged as weather-based controllers are: a daily balance of each zone's working storage,
 * which is its allowed depletion, half full at the start. Plants get all they need while any of it
 * is left; what they lack then is a deficit, and irrigation that it cannot take up, or that runs
 * off, is lost.
 *
 * @see "Climatologically based controllers, test protocol, 8th draft (2008): adequacy and
 *     scheduling efficiency from a daily balance, from memory. The thresholds were read in an
 *     abstract: Davis and Dukes, paper 152181829 of the American Society of Agricultural and
 *     Biological Engineers (2015)"
 */
public final class ControllerScores {
  /** The part of the need that must be met: U.S. EPA WaterSense, as that abstract has it. */
  public static final double ADEQUATE = 0.80;

  /** The part of the irrigation that must not be lost: the same. */
  public static final double EFFICIENT = 0.95;

  private static final double START = 0.5;

  /** All of the working storage can be used; a root zone asks for a part. */
  private static final double ALL = 1 - 1e-12;

  private ControllerScores() {}

  /**
   * What a zone scored.
   *
   * @param zone the zone
   * @param adequacy need met ÷ need
   * @param efficiency irrigation not lost ÷ irrigation; 1 where there was none
   */
  public record Score(SeasonZone zone, double adequacy, double efficiency) {
    /** Says whether both thresholds are met. */
    public boolean passes() {
      return adequacy >= ADEQUATE - 1e-9 && efficiency >= EFFICIENT - 1e-9;
    }
  }

  /** Returns the score of each zone of a season, over the months in which it waters. */
  public static List<Score> of(Season season) {
    List<Score> scores = new ArrayList<>();
    for (SeasonZone zone : season.zones().zones()) {
      scores.add(score(season, zone));
    }
    return scores;
  }

  private static Score score(Season season, SeasonZone zone) {
    DaysOfWeather days = season.weather().days();
    double storage = zone.soil().readilyAvailable();
    RootZone working = new RootZone(storage, ALL, zone.soil().coefficients());
    WaterGiven given = season.run(zone).given();
    double part = zone.application().scheduled();
    SoilDays soil =
        new SoilDays(working, days, working.needs(days), given.soakingIn(part), START * storage);
    double need = 0;
    double taken = 0;
    double irrigation = 0;
    double lost = 0;
    for (int day = 0; day < days.size(); day++) {
      if (season.rule().watersIn(days.month(day))) {
        need += soil.need(day);
        taken += soil.taken(day);
        irrigation += given.reaching(day) * part;
        lost += given.runOff(day) * part + soil.drainedIrrigation(day);
      }
    }
    return new Score(zone, need > 0 ? taken / need : 1, irrigation > 0 ? 1 - lost / irrigation : 1);
  }

  /** Returns the scores as a table. */
  public static SeasonTable table(Season season) {
    return SeasonTable.ofScores(of(season));
  }
}
